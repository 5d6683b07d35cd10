package org.straddle.ui.daysheet.sheet;

import java.util.List;

/**
 * How a team is told apart: its number, a hatch and a colour, in this order of trust.
 *
 * @param number 1 and up; 0 for stops that have no team
 * @param rgb    from the colour-blind-safe set of Okabe and Ito (Color Universal Design, 2002), 0xRRGGBB
 */
public record TeamMark(int number, Hatch hatch, int rgb) {

    private static final List<Integer> OKABE_ITO =
            List.of(0x0072B2, 0x009E73, 0xCC79A7, 0x56B4E9, 0xE69F00, 0xF0E442, 0xD55E00);
    private static final int GREY = 0x7A8792;
    /** Coprime to the number of colours, so that teams 1 and 8 share the colour but not the hatch. */
    private static final int HATCHES = 5;

    public static TeamMark of(int number) {
        return number < 1 ? new TeamMark(0, Hatch.LEVEL, GREY)
                : new TeamMark(number, Hatch.of((number - 1) % HATCHES),
                        OKABE_ITO.get((number - 1) % OKABE_ITO.size()));
    }

    /** The number as printed. */
    public String label() {
        return number < 1 ? "–" : String.valueOf(number);
    }
}
