package org.straddle.sky;

import java.time.Duration;

import org.straddle.words.Catalogue;

/**
 * How far a bird may be ahead of or behind its element set along the track.
 *
 * @param atEpochKm error of a fresh set, km
 * @param perDayKm  growth with every day of age, before the epoch as after it, km/day
 */
public record ErrorGrowth(double atEpochKm, double perDayKm) {

    private static final Catalogue TEXTS = Catalogue.of(ErrorGrowth.class);

    /**
     * 1 km at the epoch: the order of magnitude within a few days of the epoch in a low orbit, after
     * Kelso, "Validation of SGP4 and IS-GPS-200D Against GPS Precision Ephemerides", AAS 07-127 (2007).
     * 3 km a day: from memory, the upper end of the 1 to 3 km a day usually quoted for low orbits. A
     * disturbed Sun or a manoeuvre makes it far more.
     */
    public static final ErrorGrowth USUAL = new ErrorGrowth(1, 3);

    public ErrorGrowth {
        Ranges.require(TEXTS.text("errorGrowth.errorEpochKm"), atEpochKm, 0, 10_000);
        Ranges.require(TEXTS.text("errorGrowth.errorGrowthKm"), perDayKm, 0, 10_000);
    }

    /** Along-track error at an age, km. */
    public double alongTrackKm(Duration age) {
        return atEpochKm + perDayKm * Math.abs(age.toMillis()) / 86_400_000.0;
    }
}
