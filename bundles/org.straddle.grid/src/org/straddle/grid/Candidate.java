package org.straddle.grid;

import java.util.List;

/**
 * A place on a road from which several squares can be worked at once.
 *
 * @param kind how the road meets the line or corner
 * @param boundary the line or corner
 * @param position the crossing, or the place on the road that is nearest to the line or corner
 * @param distanceM from there to the line or corner in metres; 0 at a crossing
 * @param squares all that meet there: two at a line, four at a corner
 * @param road what crosses or passes
 * @param bearingDeg direction of the road there as it was drawn, clockwise from true north, [0, 360)
 * @param angleDeg between road and line, 0 (along it) to 90 (straight across); at a corner the smaller
 *     of the angles with both lines
 * @param bandM length in metres of the road around that place on which the middle of the station can
 *     stand and still straddle; 0 if one has to walk to the corner
 */
public record Candidate(Kind kind, Boundary boundary, GeoPosition position, double distanceM, List<Square> squares,
        MapFeature road, double bearingDeg, double angleDeg, double bandM) {

    /** How a road meets a line or corner. */
    public enum Kind {
        /** It crosses the line. */
        CROSSING,
        /** It comes within half the span of the line, but does not cross it there. */
        ALONGSIDE,
        /** It passes a corner within the chosen distance. */
        CORNER
    }

    public Candidate {
        squares = List.copyOf(squares);
    }
}
