package org.straddle.ui.sky.pass;

import java.time.Instant;

import org.straddle.sky.Place;
import org.straddle.sky.prediction.Sun;

/**
 * The sun over the site at an instant.
 *
 * @param elevationDeg of its centre, without refraction
 */
public record SunSeen(Instant at, double azimuthDeg, double elevationDeg) {

    static SunSeen of(Place place, Instant at) {
        return new SunSeen(at, Sun.azimuthDeg(place, at), Sun.elevationDeg(place, at));
    }

    /** Whether its upper edge is above a level horizon, as almanacs reckon it. */
    public boolean isUp() {
        return elevationDeg > Sun.SUNRISE_DEG;
    }

    /** The angle between the sun and a direction, degrees, 0 to 180. */
    public double separationDeg(double otherAzimuthDeg, double otherElevationDeg) {
        double a = Math.toRadians(elevationDeg);
        double b = Math.toRadians(otherElevationDeg);
        double turn = Math.toRadians(otherAzimuthDeg - azimuthDeg);
        // The haversine form keeps its digits at small angles.
        double h = square(Math.sin((b - a) / 2)) + Math.cos(a) * Math.cos(b) * square(Math.sin(turn / 2));
        return Math.toDegrees(2 * Math.asin(Math.min(1, Math.sqrt(h))));
    }

    private static double square(double x) {
        return x * x;
    }
}
