package org.straddle.ui.daysheet.sheet;

import java.util.List;
import java.util.Optional;

import org.straddle.grid.GeoPosition;

/**
 * The middle of several positions, as the direction of the sum of their unit vectors: the plain mean of longitudes is
 * wrong across the 180th meridian. Good for the light of a day, not for measuring; empty for none, or for positions
 * all around the globe, which have no middle.
 */
final class MeanPosition {

    private static final double LEAST_LENGTH = 1e-9;

    private MeanPosition() {
    }

    static Optional<GeoPosition> of(List<GeoPosition> positions) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (GeoPosition position : positions) {
            double latitude = Math.toRadians(position.latitudeDeg());
            double longitude = Math.toRadians(position.longitudeDeg());
            x += Math.cos(latitude) * Math.cos(longitude);
            y += Math.cos(latitude) * Math.sin(longitude);
            z += Math.sin(latitude);
        }
        if (x * x + y * y + z * z < LEAST_LENGTH) {
            return Optional.empty();
        }
        return Optional.of(new GeoPosition(Math.toDegrees(Math.atan2(z, Math.hypot(x, y))),
                Math.toDegrees(Math.atan2(y, x))));
    }
}
