package org.straddle.sky;

/**
 * How far a bird reaches, on a sphere of 6371 km. Geometry only, without refraction: the ellipsoid
 * changes these distances by less than half a per cent.
 */
public final class Footprint {

    /** Mean radius of the Earth used here, km. */
    public static final double EARTH_RADIUS_KM = 6371;

    private Footprint() {
    }

    /**
     * The angle at the Earth's centre between the subpoint and the places that see the bird at an
     * elevation.
     *
     * @param altitudeKm   height of the bird, 0 or more
     * @param elevationDeg −10 to 90
     * @return degrees
     */
    public static double centralAngleDeg(double altitudeKm, double elevationDeg) {
        require(altitudeKm, elevationDeg);
        double elevation = Math.toRadians(elevationDeg);
        double ratio = EARTH_RADIUS_KM * Math.cos(elevation) / (EARTH_RADIUS_KM + altitudeKm);
        return Math.toDegrees(Math.acos(Math.min(1, ratio)) - elevation);
    }

    /** The same as a distance along the ground, km. */
    public static double groundRadiusKm(double altitudeKm, double elevationDeg) {
        return Math.toRadians(centralAngleDeg(altitudeKm, elevationDeg)) * EARTH_RADIUS_KM;
    }

    /** Straight distance from a place that sees the bird at an elevation, km. */
    public static double slantRangeKm(double altitudeKm, double elevationDeg) {
        require(altitudeKm, elevationDeg);
        double up = EARTH_RADIUS_KM * Math.sin(Math.toRadians(elevationDeg));
        return -up + Math.sqrt(up * up + 2 * EARTH_RADIUS_KM * altitudeKm + altitudeKm * altitudeKm);
    }

    private static void require(double altitudeKm, double elevationDeg) {
        Ranges.require("altitude", altitudeKm, 0, 1e6);
        Ranges.require("elevation", elevationDeg, -10, 90);
    }
}
