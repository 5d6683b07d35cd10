package org.straddle.daysheet.sheet;

/** Fills that can be told apart without colour. */
public enum Hatch {
    RISING, DOTS, UPRIGHT, CROSSED, LEVEL, FALLING, SOLID, NONE;

    /** The same visible hatch for the same number, counted from 0 and round again. */
    public static Hatch of(int number) {
        return values()[Math.floorMod(number, NONE.ordinal())];
    }
}
