package org.straddle.outlook.keeping;

import java.time.Duration;

/**
 * How late a team may be: a histogram of delays in whole minutes, negative when early. The bar of a minute holds what lies
 * within half a minute of it, spread evenly. What is later than {@value #LATEST} minutes is kept there.
 */
public final class Delay {

    static final int EARLIEST = -240;
    static final int LATEST = 600;

    /** The bar of those who are in time. */
    private static final int IN_TIME = -EARLIEST;

    /** What is less likely is left out of sums; it changes no figure that anybody reads. */
    private static final double NOTHING = 1e-9;

    private final double[] bars;

    /** Outside of these two, all bars are 0. */
    private final int first;
    private final int last;

    /** Nothing that is spread went into it yet: its bars are exact minutes, rounded up. */
    private final boolean exact;

    private Delay(double[] bars, int first, int last, boolean exact) {
        this.bars = bars;
        this.first = first;
        this.last = last;
        this.exact = exact;
    }

    /** Surely in time, to the minute. */
    public static Delay none() {
        double[] bars = new double[LATEST - EARLIEST + 1];
        bars[IN_TIME] = 1;
        return new Delay(bars, IN_TIME, IN_TIME, true);
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
        for (int i = first; i <= last; i++) {
            if (bars[i] > NOTHING) {
                add(bars[i], i + more.first(), more.bars(), sum);
            }
        }
        return new Delay(sum, inside(first + more.first()), inside(last + more.first() + more.bars().length - 1), false);
    }

    /** Adds the bars of a spread, each times a chance, from a bar on. */
    private static void add(double chance, int from, double[] spread, double[] sum) {
        int begin = Math.max(0, Math.min(spread.length, -from));
        int end = Math.max(begin, Math.min(spread.length, sum.length - from));
        for (int j = 0; j < begin; j++) {
            sum[0] += chance * spread[j];
        }
        for (int j = begin; j < end; j++) {
            sum[from + j] += chance * spread[j];
        }
        for (int j = end; j < spread.length; j++) {
            sum[sum.length - 1] += chance * spread[j];
        }
    }

    /** Later by a fixed time, or earlier if that is negative; parts of a minute fall on both bars, which keeps the mean. */
    public Delay plus(Duration fixed) {
        double shift = exact ? Math.ceil(minutes(fixed)) : minutes(fixed);
        int whole = (int) Math.floor(shift);
        double part = shift - whole;
        double[] sum = new double[bars.length];
        for (int i = first; i <= last; i++) {
            if (bars[i] > 0) {
                sum[inside(i + whole)] += bars[i] * (1 - part);
                sum[inside(i + whole + 1)] += bars[i] * part;
            }
        }
        return new Delay(sum, inside(first + whole), inside(last + whole + 1), exact);
    }

    /** Who is early waits. */
    public Delay waiting() {
        double[] sum = bars.clone();
        for (int i = first; i < IN_TIME; i++) {
            sum[IN_TIME] += sum[i];
            sum[i] = 0;
        }
        return new Delay(sum, Math.max(IN_TIME, first), Math.max(IN_TIME, last), exact);
    }

    /** Probability of being late by no more than this, times what {@link #within} left. */
    public double chance(Duration most) {
        double limit = minutes(most);
        double sum = 0;
        for (int i = first; i <= last; i++) {
            sum += bars[i] * part(i, limit);
        }
        return Math.min(1, sum);
    }

    /** Only those cases in which it is late by no more than this; what is left adds up to less than 1. */
    public Delay within(Duration most) {
        double limit = minutes(most);
        double[] left = new double[bars.length];
        for (int i = first; i <= last; i++) {
            left[i] = bars[i] * part(i, limit);
        }
        return new Delay(left, first, last, exact);
    }

    /** What part of a bar lies below a limit. */
    private double part(int bar, double limit) {
        int minute = bar + EARLIEST;
        return exact ? limit >= minute ? 1 : 0 : Math.max(0, Math.min(1, limit - minute + 0.5));
    }

    /** The bar that what belongs to a bar goes into, which may lie outside. */
    private static int inside(int bar) {
        return Math.max(0, Math.min(LATEST - EARLIEST, bar));
    }

    static double minutes(Duration duration) {
        return duration.toMillis() / 60_000.0;
    }
}
