package org.straddle.daysheet.sheet;

import org.straddle.drawing.TeamMark;

/**
 * How a lane is marked: as its team on every sheet, or grey and without a number where there is no team.
 *
 * @param number 1 and up; 0 for stops that have no team
 * @param rgb    0xRRGGBB
 */
public record LaneMark(int number, Hatch hatch, int rgb) {

    private static final LaneMark NOBODY = new LaneMark(0, Hatch.LEVEL, 0x7A8792);

    public static LaneMark of(int number) {
        if (number < 1) {
            return NOBODY;
        }
        TeamMark team = TeamMark.of(number);
        return new LaneMark(number, switch (team.pattern()) {
            case PLAIN -> Hatch.NONE;
            case RISING -> Hatch.RISING;
            case LEVEL -> Hatch.LEVEL;
            case DOTS -> Hatch.DOTS;
        }, team.rgb());
    }

    /** The number as printed. */
    public String label() {
        return number < 1 ? "–" : String.valueOf(number);
    }
}
