package org.straddle.daysheet.sheet;

/**
 * How the sheet draws the mark that a team has on its brief and in the announcement
 * ({@link org.straddle.publish.TeamMark}): its number, a hatch and a colour, in this order of trust.
 *
 * @param number 1 and up; 0 for stops that have no team
 * @param rgb    0xRRGGBB
 */
public record TeamMark(int number, Hatch hatch, int rgb) {

    private static final TeamMark NOBODY = new TeamMark(0, Hatch.LEVEL, 0x7A8792);

    public static TeamMark of(int number) {
        if (number < 1) {
            return NOBODY;
        }
        org.straddle.publish.TeamMark printed = org.straddle.publish.TeamMark.of(number);
        return new TeamMark(number, switch (printed.pattern()) {
            case PLAIN -> Hatch.NONE;
            case RISING -> Hatch.RISING;
            case LEVEL -> Hatch.LEVEL;
            case DOTS -> Hatch.DOTS;
        }, Integer.decode(printed.colour().hex()));
    }

    /** The number as printed. */
    public String label() {
        return number < 1 ? "–" : String.valueOf(number);
    }
}
