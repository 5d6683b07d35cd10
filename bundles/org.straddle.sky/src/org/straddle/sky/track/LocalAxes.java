package org.straddle.sky.track;

import org.straddle.sky.Place;

/** A place as an Earth-fixed point (metres) with its own east, north and up (unit vectors). */
public final class LocalAxes {

    /** WGS-84, NIMA TR8350.2. */
    private static final double EQUATORIAL_RADIUS_M = 6_378_137.0;
    private static final double FLATTENING = 1 / 298.257223563;

    public final double[] site;
    final double[] east;
    final double[] north;
    public final double[] up;

    public LocalAxes(Place place) {
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
}
