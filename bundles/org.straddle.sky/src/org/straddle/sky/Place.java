package org.straddle.sky;

/**
 * A spot on the ground, or above it, on the WGS-84 ellipsoid.
 *
 * @param latitudeDeg  geodetic latitude, degrees, −90 to 90, north positive
 * @param longitudeDeg degrees, −180 to 180, east positive
 * @param altitudeM    height above the ellipsoid, metres, −1000 to 100 000
 */
public record Place(double latitudeDeg, double longitudeDeg, double altitudeM) {

    /** @throws IllegalArgumentException when a value is out of its range or not a number */
    public Place {
        Ranges.require("latitude", latitudeDeg, -90, 90);
        Ranges.require("longitude", longitudeDeg, -180, 180);
        Ranges.require("altitude", altitudeM, -1000, 100_000);
    }

    /** A place at height zero. */
    public static Place of(double latitudeDeg, double longitudeDeg) {
        return new Place(latitudeDeg, longitudeDeg, 0);
    }
}
