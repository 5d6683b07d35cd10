package org.straddle.grid;

import java.util.List;

/**
 * A line or corner as seen from a position.
 *
 * @param boundary the line or corner
 * @param distanceM shortest distance to it on the ellipsoid, in metres
 * @param foot the point of it that is nearest
 * @param squares what meets there: two at a line, four at a corner
 */
public record NearBoundary(Boundary boundary, double distanceM, GeoPosition foot, List<Square> squares) {

    public NearBoundary {
        squares = List.copyOf(squares);
    }
}
