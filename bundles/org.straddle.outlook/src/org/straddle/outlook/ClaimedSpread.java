package org.straddle.outlook;

import java.util.Optional;
import java.util.Set;

import org.straddle.grid.Boundary;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridCorner;
import org.straddle.grid.GridLine;
import org.straddle.grid.NearBoundary;
import org.straddle.grid.NearbyBoundaries;
import org.straddle.grid.Square;
import org.straddle.grid.Squares;
import org.straddle.grid.Standing;
import org.straddle.grid.StationSpread;

/**
 * How the station of a site lies about the place where its claimed squares meet, with its middle on the mark.
 */
final class ClaimedSpread {

    /** Farther inside than this no position error in use matters. */
    private static final double DEEP_INSIDE_M = 10_000;

    private ClaimedSpread() {
    }

    /**
     * @param spanM longest distance between two parts of the station, metres
     * @return empty when the squares do not meet at the mark, or are not one, two or four
     */
    static Optional<StationSpread> of(GeoPosition mark, Set<Square> claimed, double spanM) {
        if (claimed.size() == 1) {
            return within(mark, claimed.iterator().next(), spanM);
        }
        Optional<Boundary> place = Squares.meetingPlace(claimed);
        if (place.orElse(null) instanceof GridLine line) {
            NearBoundary near = NearbyBoundaries.toLine(mark, line);
            return claimed.equals(Set.copyOf(near.squares()))
                    ? Optional.of(new StationSpread(Standing.Kind.LINE, spanM, near.distanceM(), 0)) : Optional.empty();
        }
        return place.map(boundary -> onCorner(mark, (GridCorner) boundary, spanM));
    }

    private static Optional<StationSpread> within(GeoPosition mark, Square square, double spanM) {
        if (!Square.of(mark).equals(square)) {
            return Optional.empty();
        }
        double marginM = NearbyBoundaries.of(mark, DEEP_INSIDE_M).stream().mapToDouble(NearBoundary::distanceM)
                .min().orElse(DEEP_INSIDE_M);
        return Optional.of(new StationSpread(Standing.Kind.INSIDE, spanM, marginM, 0));
    }

    private static StationSpread onCorner(GeoPosition mark, GridCorner corner, double spanM) {
        return new StationSpread(Standing.Kind.CORNER, spanM,
                NearbyBoundaries.toLine(mark, corner.meridian()).distanceM(),
                NearbyBoundaries.toLine(mark, corner.parallel()).distanceM());
    }
}
