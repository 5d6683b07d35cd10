package org.straddle.grid;

import org.straddle.words.Catalogue;

/**
 * How near a road has to come.
 *
 * @param spanM the longest distance between two occupied parts of the station in metres, above 0 to
 *     {@link #LONGEST_SPAN_M}: placed with its middle up to half of it from a line, the station still straddles
 * @param cornerDistanceM how far from a corner a road may pass to be reported, in metres, 0 to
 *     {@link #FARTHEST_CORNER_M}; from the road one walks
 */
public record ScoutReach(double spanM, double cornerDistanceM) {

    private static final Catalogue TEXTS = Catalogue.of(ScoutReach.class);

    public static final double LONGEST_SPAN_M = 1000;
    public static final double FARTHEST_CORNER_M = 10_000;

    /** @throws IllegalArgumentException with a sentence for the user if a length is out of range */
    public ScoutReach {
        if (!(spanM > 0 && spanM <= LONGEST_SPAN_M)) {
            throw new IllegalArgumentException(TEXTS.text("scoutReach.span", "spanM", spanM, "mostM", LONGEST_SPAN_M));
        }
        if (!(cornerDistanceM >= 0 && cornerDistanceM <= FARTHEST_CORNER_M)) {
            throw new IllegalArgumentException(TEXTS.text("scoutReach.corner", "distanceM", cornerDistanceM, "mostM", FARTHEST_CORNER_M));
        }
    }

    /** How far the middle of the station may be from what it straddles. */
    double halfSpanM() {
        return spanM / 2;
    }

    /** How far from a corner a road is looked for: a station that reaches the corner is always of interest. */
    double cornerReachM() {
        return Math.max(Math.max(cornerDistanceM, halfSpanM()), Crossings.CORNER_M);
    }
}
