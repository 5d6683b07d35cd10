package org.straddle.grid;

import java.util.List;

/**
 * Where a track goes from one square into another.
 *
 * @param boundary the line that is crossed, or the corner if the track runs through it
 * @param position the point, exactly on the line
 * @param distanceM metres from the start of the track
 * @param bearingDeg direction of travel there, clockwise from true north, [0, 360)
 * @param edge number of the edge of the track, counted from 0
 * @param from square that is left
 * @param to square that is entered
 * @param squares all that meet there: two at a line, four at a corner
 */
public record Crossing(Boundary boundary, GeoPosition position, double distanceM, double bearingDeg, int edge,
        Square from, Square to, List<Square> squares) {

    public Crossing {
        squares = List.copyOf(squares);
    }
}
