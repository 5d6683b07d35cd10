package org.straddle.outlook.keeping;

import java.time.Duration;
import java.util.stream.IntStream;

import org.hipparchus.special.Erf;

/**
 * How long something of uncertain length takes, normally distributed: the chance of each whole minute, within half a minute.
 *
 * @param usual the mean; negative for time that is there beyond it
 * @param first minute of the first bar
 * @param bars  chances, adding up to 1; none if nothing is uncertain
 */
record Spread(Duration usual, int first, double[] bars) {

    private static final int DEVIATIONS = 4;

    /** Nobody is delayed by more than this from one end of a {@link Delay} to the other, minutes. */
    private static final int WIDEST = Delay.LATEST - Delay.EARLIEST;

    /** Steps of the table in one standard deviation; between them it is off by less than 5e-7. */
    private static final int STEPS = 256;

    /** The distribution function of the normal distribution, once: the series behind it is slow, and every edit asks. */
    private static final double[] NORMAL = IntStream.rangeClosed(-DEVIATIONS * STEPS, DEVIATIONS * STEPS)
            .mapToDouble(step -> Erf.erfc(-step / (double) STEPS / Math.sqrt(2)) / 2).toArray();

    static Spread of(Duration usual, Duration deviation) {
        double mean = Delay.minutes(usual);
        double sigma = Delay.minutes(deviation);
        if (sigma < 1e-6) {
            return new Spread(usual, 0, new double[0]);
        }
        int first = inside(Math.floor(mean - DEVIATIONS * sigma));
        int last = inside(Math.ceil(mean + DEVIATIONS * sigma));
        double[] bars = new double[last - first + 1];
        double below = 0;
        for (int minute = first; minute <= last; minute++) {
            double until = minute == last ? 1 : normal((minute + 0.5 - mean) / sigma);
            bars[minute - first] = until - below;
            below = until;
        }
        return new Spread(usual, first, bars);
    }

    private static int inside(double minute) {
        return (int) Math.max(-WIDEST, Math.min(WIDEST, minute));
    }

    private static double normal(double deviations) {
        double at = (deviations + DEVIATIONS) * STEPS;
        if (at <= 0) {
            return 0;
        }
        int step = (int) at;
        return step >= NORMAL.length - 1 ? 1 : NORMAL[step] + (at - step) * (NORMAL[step + 1] - NORMAL[step]);
    }
}
