package org.straddle.sky;

/**
 * The view from one place along one track: east, north and up axes at the place, and angles and
 * distances to the bird. Holds scratch space, so one per thread; angles in radians.
 */
final class Sightline {

    /** WGS-84, NIMA TR8350.2. */
    private static final double EQUATORIAL_RADIUS_M = 6_378_137.0;
    private static final double FLATTENING = 1 / 298.257223563;

    private final Track track;
    private final double[] site;
    private final double[] east;
    private final double[] north;
    private final double[] up;
    private final double[] state = new double[6];

    private double dx;
    private double dy;
    private double dz;
    private double u;
    private double range;

    Sightline(Place place, Track track) {
        this.track = track;
        double latitude = Math.toRadians(place.latitudeDeg());
        double longitude = Math.toRadians(place.longitudeDeg());
        double sinLat = Math.sin(latitude);
        double cosLat = Math.cos(latitude);
        double sinLon = Math.sin(longitude);
        double cosLon = Math.cos(longitude);
        double e2 = FLATTENING * (2 - FLATTENING);
        double normal = EQUATORIAL_RADIUS_M / Math.sqrt(1 - e2 * sinLat * sinLat);
        double h = place.altitudeM();
        site = new double[] {(normal + h) * cosLat * cosLon, (normal + h) * cosLat * sinLon,
            (normal * (1 - e2) + h) * sinLat};
        east = new double[] {-sinLon, cosLon, 0};
        north = new double[] {-sinLat * cosLon, -sinLat * sinLon, cosLat};
        up = new double[] {cosLat * cosLon, cosLat * sinLon, sinLat};
    }

    /** Looks along the track at a time; the other methods then speak of that time. */
    Sightline at(double timeS) {
        track.state(timeS, state);
        return toward(state[0], state[1], state[2]);
    }

    /** Looks at an Earth-fixed point, metres. */
    Sightline toward(double x, double y, double z) {
        dx = x - site[0];
        dy = y - site[1];
        dz = z - site[2];
        u = dx * up[0] + dy * up[1] + dz * up[2];
        range = Math.sqrt(dx * dx + dy * dy + dz * dz);
        return this;
    }

    private double east() {
        return dx * east[0] + dy * east[1];
    }

    private double north() {
        return dx * north[0] + dy * north[1] + dz * north[2];
    }

    double elevation() {
        double e = east();
        double n = north();
        // atan2 keeps its precision near the zenith, where asin would not.
        return Math.atan2(u, Math.sqrt(e * e + n * n));
    }

    /** From north over east, 0 ≤ azimuth &lt; 2π. */
    double azimuth() {
        double azimuth = Math.atan2(east(), north());
        return azimuth < 0 ? azimuth + 2 * Math.PI : azimuth;
    }

    /** Metres. */
    double range() {
        return range;
    }

    /** Metres above the plane level at the place. */
    double height() {
        return u;
    }

    /** m/s upward. */
    double heightRate() {
        return state[3] * up[0] + state[4] * up[1] + state[5] * up[2];
    }

    /** Sine of the elevation: cheaper than the angle, and highest at the same time. */
    double sinElevation() {
        return u / range;
    }

    /** Its change, per second. */
    double sinElevationRate() {
        return (heightRate() - sinElevation() * rangeRate()) / range;
    }

    /** m/s, positive while receding. */
    double rangeRate() {
        return (dx * state[3] + dy * state[4] + dz * state[5]) / range;
    }

    /** Whether the bird moves toward the north pole. */
    boolean movesNorth() {
        double r2 = state[0] * state[0] + state[1] * state[1] + state[2] * state[2];
        double radial = (state[0] * state[3] + state[1] * state[4] + state[2] * state[5]) / r2;
        return state[5] - radial * state[2] > 0;
    }

    Look look() {
        double azimuthDeg = Math.toDegrees(azimuth());
        return new Look(azimuthDeg >= 360 ? 0 : azimuthDeg, Math.toDegrees(elevation()), range / 1000,
                rangeRate() / 1000);
    }
}
