package org.straddle.sky;

import java.time.Instant;

/** Invented birds, places and times in one line each. */
final class Invented {

    static final Instant EPOCH = Instant.parse("2031-06-20T12:00:00Z");
    static final Window DAY = Window.parse("2031-06-21T00:00:00Z/P1D");
    /** Somewhere on the south coast of Iceland. */
    static final Place SKERRY = new Place(63.5, -20, 30);

    private Invented() {
    }

    /** A near-circular low bird. */
    static ElementSet low(String name, double altitudeKm, double inclinationDeg, double raanDeg, double anomalyDeg) {
        return orbit(name, altitudeKm, altitudeKm, inclinationDeg, raanDeg, 0, anomalyDeg);
    }

    /** A bird by the heights of its perigee and apogee above the equatorial radius, km. */
    static ElementSet orbit(String name, double perigeeKm, double apogeeKm, double inclinationDeg, double raanDeg,
            double argumentOfPerigeeDeg, double anomalyDeg) {
        double a = Wgs72.EARTH_RADIUS_KM + (perigeeKm + apogeeKm) / 2;
        double revPerDay = Math.sqrt(Wgs72.MU_KM3_S2 / (a * a * a)) * 86_400 / (2 * Math.PI);
        return new ElementSet(name + " (demo)", 99_001, "", EPOCH, revPerDay, (apogeeKm - perigeeKm) / 2 / a,
                inclinationDeg, raanDeg, argumentOfPerigeeDeg, anomalyDeg, 1e-5, 0, 0, 1, 1);
    }

    static ElementSet geostationary(double longitudeDeg) {
        // Greenwich's sidereal angle at the epoch: the node is put so that the bird stands over the longitude.
        Ephemeris trial = Ephemeris.of(synchronous(0), new Window(EPOCH, EPOCH.plusSeconds(60)), null);
        double turn = longitudeDeg - trial.subpoint(EPOCH).longitudeDeg();
        return synchronous(((turn % 360) + 360) % 360);
    }

    private static ElementSet synchronous(double anomalyDeg) {
        return new ElementSet("Gannet-S (demo)", 99_002, "", EPOCH, 1.00271, 1e-5, 0.01, 0, 0, anomalyDeg, 0, 0, 0, 1, 1);
    }
}
