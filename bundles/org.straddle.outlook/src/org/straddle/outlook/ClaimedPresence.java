package org.straddle.outlook;

import java.util.Optional;
import java.util.Set;

import org.straddle.grid.Boundary;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridCorner;
import org.straddle.grid.GridLine;
import org.straddle.grid.NearBoundary;
import org.straddle.grid.NearbyBoundaries;
import org.straddle.grid.Presence;
import org.straddle.grid.Square;
import org.straddle.grid.Squares;

/**
 * How likely a station whose middle stands on a mark occupies every square it claims.
 *
 * <p>On a line the station lies straight across it: its ends are half the span away from the mark, one
 * on each side. On a corner its four parts are the corners of a square whose diagonal is the span, so
 * each is the span over 2√2 away from the mark's own meridian and parallel. Within one square the
 * station is a point on the mark: the team may set it up on the inner side.
 */
final class ClaimedPresence {

    /** Farther inside than this no position error in use matters. */
    private static final double DEEP_INSIDE_M = 10_000;

    private ClaimedPresence() {
    }

    /**
     * @param errorM R95 of the mark, metres, 0 or more
     * @param spanM  longest distance between two parts of the station, metres
     * @return empty when the squares do not meet at the mark, or are not one, two or four
     */
    static Optional<Presence> of(GeoPosition mark, Set<Square> claimed, double errorM, double spanM) {
        if (claimed.size() == 1) {
            return within(mark, claimed.iterator().next(), errorM);
        }
        Optional<Boundary> place = Squares.meetingPlace(claimed);
        if (place.orElse(null) instanceof GridLine line) {
            return acrossLine(mark, line, claimed, errorM, spanM);
        }
        return place.map(boundary -> acrossCorner(mark, (GridCorner) boundary, errorM, spanM));
    }

    private static Optional<Presence> within(GeoPosition mark, Square square, double errorM) {
        if (!Square.of(mark).equals(square)) {
            return Optional.empty();
        }
        double marginM = NearbyBoundaries.of(mark, DEEP_INSIDE_M).stream().mapToDouble(NearBoundary::distanceM)
                .min().orElse(DEEP_INSIDE_M);
        return Optional.of(Presence.acrossLine(errorM, marginM, Math.max(DEEP_INSIDE_M, 100 * errorM)));
    }

    private static Optional<Presence> acrossLine(GeoPosition mark, GridLine line, Set<Square> claimed, double errorM,
            double spanM) {
        NearBoundary near = NearbyBoundaries.toLine(mark, line);
        if (!claimed.equals(Set.copyOf(near.squares()))) {
            return Optional.empty();
        }
        return Optional.of(Presence.acrossLine(errorM, spanM / 2 - near.distanceM(), spanM / 2 + near.distanceM()));
    }

    private static Presence acrossCorner(GeoPosition mark, GridCorner corner, double errorM, double spanM) {
        double half = spanM / (2 * Math.sqrt(2));
        double toMeridian = NearbyBoundaries.toLine(mark, corner.meridian()).distanceM();
        double toParallel = NearbyBoundaries.toLine(mark, corner.parallel()).distanceM();
        // Which side the mark is on does not change the product.
        return Presence.acrossCorner(errorM, half - toMeridian, half + toMeridian, half - toParallel,
                half + toParallel);
    }
}
