package org.straddle.daysheet.fits;

/** Where somebody takes hold of a stop or turn: all of it moves, or one of its ends. */
public enum Grip {
    WHOLE, START, END
}
