package org.straddle.atlas.scene;

/**
 * What a team is known by on a map: its number, a hatch and a colour.
 *
 * @param number the team's number
 * @param rgb 0xRRGGBB
 */
public record TeamStyle(int number, Hatch hatch, int rgb) {

    /** Fills that stay apart at small size. */
    public enum Hatch {
        PLAIN, RISING, LEVEL, DOTS
    }
}
