package org.straddle.daysheet.layout;

/**
 * How much of the legend stands at the bottom: all of it where there is room and else one line, all of it whatever it
 * takes, or nothing.
 */
public enum LegendSize {
    FITTING, FULL, NONE;

    /** The next one in turn. */
    public LegendSize next() {
        return values()[(ordinal() + 1) % values().length];
    }
}
