package org.straddle.atlas.mark;

import java.util.Optional;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridCorner;
import org.straddle.grid.GridLine;
import org.straddle.grid.NearBoundary;
import org.straddle.grid.NearbyBoundaries;

/** The exact place on a line between squares, or on a corner, that a rough place is meant for. */
public final class Snap {

    /** Farther than across a square in the middle latitudes nobody means a line. */
    public static final double FARTHEST_M = 120_000;

    private Snap() {
    }

    /** The nearest line within a distance in metres. */
    public static Optional<NearBoundary> toLine(GeoPosition from, double withinM) {
        return near(from, withinM, GridLine.class);
    }

    /** The nearest corner of four squares within a distance in metres. */
    public static Optional<NearBoundary> toCorner(GeoPosition from, double withinM) {
        return near(from, withinM, GridCorner.class);
    }

    /** A corner within the distance, because who is near one is near its lines too; else the nearest line. */
    public static Optional<NearBoundary> toAny(GeoPosition from, double withinM) {
        return toCorner(from, withinM).or(() -> toLine(from, withinM));
    }

    private static Optional<NearBoundary> near(GeoPosition from, double withinM, Class<?> kind) {
        return NearbyBoundaries.of(from, Math.min(withinM, FARTHEST_M)).stream()
                .filter(near -> kind.isInstance(near.boundary())).findFirst();
    }
}
