package org.straddle.outlook.keeping;

import java.time.Duration;

/**
 * How late a team may be: a histogram of delays in whole minutes, negative when early. The bar of a minute holds what lies
 * within half a minute of it, spread evenly. What is later than {@value #LATEST} minutes is kept there.
 */
public final class Delay {

    static final int EARLIEST = -240;
    static final int LATEST = 600;

    /** What is less likely is left out of sums; it changes no figure that anybody reads. */
    private static final double NOTHING = 1e-9;

    private final double[] bars;

    /** Nothing that is spread went into it yet: its bars are exact minutes, rounded up. */
    private final boolean exact;

    private Delay(double[] bars, boolean exact) {
        this.bars = bars;
        this.exact = exact;
    }

    /** Surely in time, to the minute. */
    public static Delay none() {
        double[] bars = new double[LATEST - EARLIEST + 1];
        bars[-EARLIEST] = 1;
        return new Delay(bars, true);
    }

    /** After something more whose length is normally distributed. @param usual may be negative: time that is there beyond it */
    public Delay plus(Duration usual, Duration deviation) {
        return plus(Spread.of(usual, deviation));
    }

    /** After something more of uncertain length. */
    Delay plus(Spread more) {
        if (more.bars().length == 0) {
            return plus(more.usual());
        }
        double[] sum = new double[bars.length];
        for (int i = 0; i < bars.length; i++) {
            if (bars[i] > NOTHING) {
                for (int j = 0; j < more.bars().length; j++) {
                    sum[index(i + EARLIEST + more.first() + j)] += bars[i] * more.bars()[j];
                }
            }
        }
        return new Delay(sum, false);
    }

    /** Later by a fixed time, or earlier if that is negative; parts of a minute fall on both bars, which keeps the mean. */
    public Delay plus(Duration fixed) {
        double shift = exact ? Math.ceil(minutes(fixed)) : minutes(fixed);
        int whole = (int) Math.floor(shift);
        double part = shift - whole;
        double[] sum = new double[bars.length];
        for (int i = 0; i < bars.length; i++) {
            if (bars[i] > 0) {
                sum[index(i + EARLIEST + whole)] += bars[i] * (1 - part);
                sum[index(i + EARLIEST + whole + 1)] += bars[i] * part;
            }
        }
        return new Delay(sum, exact);
    }

    /** Who is early waits. */
    public Delay waiting() {
        double[] sum = bars.clone();
        for (int i = 0; i < -EARLIEST; i++) {
            sum[-EARLIEST] += sum[i];
            sum[i] = 0;
        }
        return new Delay(sum, exact);
    }

    /** Probability of being late by no more than this, times what {@link #within} left. */
    public double chance(Duration most) {
        double limit = minutes(most);
        double sum = 0;
        for (int i = 0; i < bars.length; i++) {
            sum += bars[i] * part(i, limit);
        }
        return Math.min(1, sum);
    }

    /** Only those cases in which it is late by no more than this; what is left adds up to less than 1. */
    public Delay within(Duration most) {
        double limit = minutes(most);
        double[] left = new double[bars.length];
        for (int i = 0; i < bars.length; i++) {
            left[i] = bars[i] * part(i, limit);
        }
        return new Delay(left, exact);
    }

    /** What part of a bar lies below a limit. */
    private double part(int bar, double limit) {
        int minute = bar + EARLIEST;
        return exact ? limit >= minute ? 1 : 0 : Math.max(0, Math.min(1, limit - minute + 0.5));
    }

    private static int index(int minute) {
        return Math.max(EARLIEST, Math.min(LATEST, minute)) - EARLIEST;
    }

    static double minutes(Duration duration) {
        return duration.toMillis() / 60_000.0;
    }
}
