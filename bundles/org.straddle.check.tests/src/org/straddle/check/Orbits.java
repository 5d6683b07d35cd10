package org.straddle.check;

import java.time.Duration;
import java.time.Instant;

import org.straddle.model.BirdElements;
import org.straddle.model.StraddleFactory;

/** Invented orbits: one that stands still in the sky, so that a bird is up all day, and a low one with passes. */
final class Orbits {

    /** Rotations of the Earth a day, against the stars. */
    private static final double SIDEREAL_REV_PER_DAY = 1.00273790935;

    private Orbits() {
    }

    /** A bird above the equator at a longitude, degrees, east positive. */
    static BirdElements above(double longitudeDeg, int number, Instant epoch) {
        BirdElements elements = elements(number, epoch);
        elements.setMeanMotionRevPerDay(SIDEREAL_REV_PER_DAY);
        elements.setEccentricity(0.0001);
        elements.setInclinationDeg(0.01);
        elements.setMeanAnomalyDeg(turned(longitudeDeg + siderealTimeDeg(epoch)));
        return elements;
    }

    /** A bird some 700 km up that crosses the poles. */
    static BirdElements low(int number, Instant epoch) {
        BirdElements elements = elements(number, epoch);
        elements.setMeanMotionRevPerDay(14.6);
        elements.setEccentricity(0.001);
        elements.setInclinationDeg(88);
        return elements;
    }

    private static BirdElements elements(int number, Instant epoch) {
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setCatalogueNumber(number);
        elements.setEpoch(epoch);
        return elements;
    }

    /** Greenwich mean sidereal time to 0.01°: the linear terms of the IAU 1982 formula (from memory). */
    private static double siderealTimeDeg(Instant instant) {
        double days = Duration.between(Instant.parse("2000-01-01T12:00:00Z"), instant).toSeconds() / 86_400.0;
        return 280.46062 + 360.98564737 * days;
    }

    private static double turned(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }
}
