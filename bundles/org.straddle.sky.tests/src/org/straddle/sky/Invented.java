package org.straddle.sky;

import java.time.Instant;

/** Invented birds, places and times in one line each. */
public final class Invented {

    public static final Instant EPOCH = Instant.parse("2031-06-20T12:00:00Z");
    public static final Window DAY = Window.parse("2031-06-21T00:00:00Z/P1D");
    /** Somewhere on the south coast of Iceland. */
    public static final Place SKERRY = new Place(63.5, -20, 30);

    private Invented() {
    }

    /** A near-circular low bird. */
    public static ElementSet low(String name, double altitudeKm, double inclinationDeg, double raanDeg, double anomalyDeg) {
        return orbit(name, altitudeKm, altitudeKm, inclinationDeg, raanDeg, 0, anomalyDeg);
    }

    /** A bird by the heights of its perigee and apogee above the equatorial radius, km. */
    public static ElementSet orbit(String name, double perigeeKm, double apogeeKm, double inclinationDeg, double raanDeg,
            double argumentOfPerigeeDeg, double anomalyDeg) {
        double a = Wgs72.EARTH_RADIUS_KM + (perigeeKm + apogeeKm) / 2;
        double revPerDay = Math.sqrt(Wgs72.MU_KM3_S2 / (a * a * a)) * 86_400 / (2 * Math.PI);
        return new ElementSet(name + " (demo)", 99_001, "", EPOCH, revPerDay, (apogeeKm - perigeeKm) / 2 / a,
                inclinationDeg, raanDeg, argumentOfPerigeeDeg, anomalyDeg, 1e-5, 0, 0, 1, 1);
    }
}
