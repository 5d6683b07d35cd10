package org.straddle.sky;

/**
 * The point of the WGS-84 ellipsoid straight below a bird, and the bird's height over it.
 *
 * @param latitudeDeg  geodetic, degrees, north positive
 * @param longitudeDeg degrees, −180 ≤ longitude ≤ 180, east positive
 * @param altitudeKm   height above the ellipsoid, kilometres
 */
public record Subpoint(double latitudeDeg, double longitudeDeg, double altitudeKm) {
}
