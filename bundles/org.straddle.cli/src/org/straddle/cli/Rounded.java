package org.straddle.cli;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Figures of a table, no finer than they are known. */
final class Rounded {

    private Rounded() {
    }

    /** To the nearest second: finer would promise more than element sets hold. */
    static Instant second(Instant instant) {
        return instant.plusMillis(500).truncatedTo(ChronoUnit.SECONDS);
    }

    static double whole(double value) {
        return to(1, value);
    }

    static double tenths(double value) {
        return to(10, value);
    }

    static double hundredths(double value) {
        return to(100, value);
    }

    static double thousandths(double value) {
        return to(1000, value);
    }

    private static double to(double steps, double value) {
        return Math.round(value * steps) / steps;
    }
}
