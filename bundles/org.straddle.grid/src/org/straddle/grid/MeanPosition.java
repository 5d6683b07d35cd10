package org.straddle.grid;

import java.util.List;
import java.util.Optional;

/**
 * The middle of several positions, as the direction of the sum of their unit vectors: the plain mean of longitudes is
 * wrong across the 180th meridian. Good for the light of a day or the centre of a map, not for measuring.
 */
public final class MeanPosition {

    /** Of the mean vector, as a share of the Earth's radius: shorter ones point nowhere. */
    private static final double LEAST_LENGTH = 1e-6;

    private MeanPosition() {
    }

    /** Empty for no positions, or for positions all around the globe, which have no middle. */
    public static Optional<GeoPosition> of(List<GeoPosition> positions) {
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
        if (positions.isEmpty() || Math.sqrt(x * x + y * y + z * z) < LEAST_LENGTH * positions.size()) {
            return Optional.empty();
        }
        return Optional.of(new GeoPosition(Math.toDegrees(Math.atan2(z, Math.hypot(x, y))),
                Math.toDegrees(Math.atan2(y, x))));
    }
}
