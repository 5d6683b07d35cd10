package org.straddle.daysheet.legal;

/** Where somebody takes hold of a stop or turn: all of it moves, or one of its ends. */
public enum Grip {
    WHOLE, START, END
}
