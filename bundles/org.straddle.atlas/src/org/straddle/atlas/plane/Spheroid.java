package org.straddle.atlas.plane;

/**
 * A flattened sphere.
 *
 * @param semiMajorM equatorial radius, metres
 * @param inverseFlattening 1/f, greater than 1
 */
public record Spheroid(double semiMajorM, double inverseFlattening) {

    /** EPSG ellipsoid 7030. */
    public static final Spheroid WGS84 = new Spheroid(6_378_137, 298.257223563);

    /** e². */
    public double eccentricitySquared() {
        double flattening = 1 / inverseFlattening;
        return flattening * (2 - flattening);
    }

    public double eccentricity() {
        return Math.sqrt(eccentricitySquared());
    }

    /** Radius of the parallel over that of the equator: cos φ / √(1 − e² sin² φ); Snyder (1987) equation 14-15. */
    double parallelRadius(double latitudeRad) {
        double sin = Math.sin(latitudeRad);
        return Math.cos(latitudeRad) / Math.sqrt(1 - eccentricitySquared() * sin * sin);
    }

    /**
     * The geodetic latitude, radians, of an isometric latitude, found by Newton's way as in EPSG Guidance Note 7-2,
     * method 9809.
     */
    double latitudeRad(double isometric) {
        double e = eccentricity();
        double latitude = 2 * Math.atan(Math.exp(isometric)) - Math.PI / 2;
        for (int step = 0; step < 10; step++) {
            double sin = Math.sin(latitude);
            double miss = isometric(latitude) - isometric;
            double change = miss * Math.cos(latitude) * (1 - e * e * sin * sin) / (1 - e * e);
            latitude -= change;
            if (Math.abs(change) < 1e-14) {
                break;
            }
        }
        return latitude;
    }

    /** ln tan(π/4 + φ/2) − (e/2) ln((1 + e sin φ)/(1 − e sin φ)); infinite at the poles. */
    double isometric(double latitudeRad) {
        double e = eccentricity();
        double sin = Math.sin(latitudeRad);
        return atanh(sin) - e * atanh(e * sin);
    }

    private static double atanh(double x) {
        return 0.5 * Math.log((1 + x) / (1 - x));
    }
}
