package org.straddle.sky;

import java.util.function.DoubleUnaryOperator;

/** Times at which something changes sign, and where it is highest, between two times in seconds. */
final class Roots {

    /** A microsecond: far below what the model is worth, far above rounding. */
    private static final double TOLERANCE_S = 1e-6;
    /** A top is flat: its time means less. */
    private static final double TOP_TOLERANCE_S = 1e-4;
    /** Half the base of the difference quotient that tells the slope's sign. */
    private static final double SLOPE_S = 0.005;

    private Roots() {
    }

    /** The root between {@code a} and {@code b}, where {@code fa} and {@code fb} differ in sign. */
    static double between(DoubleUnaryOperator f, double a, double fa, double b, double fb) {
        return root(f, a, fa, b, fb, TOLERANCE_S);
    }

    /**
     * The same of a function whose slope is known: Newton's steps from the chord, and a bisection whenever
     * one leaves the interval or does not halve the step before it.
     */
    static double between(DoubleUnaryOperator f, DoubleUnaryOperator slope, double a, double fa, double b, double fb) {
        double lo = a;
        double hi = b;
        double t = (a * fb - b * fa) / (fb - fa);
        double last = b - a;
        while (hi - lo > TOLERANCE_S) {
            double ft = f.applyAsDouble(t);
            if (ft > 0 == fb > 0) {
                hi = t;
            } else {
                lo = t;
            }
            double next = t - ft / slope.applyAsDouble(t);
            if (!(next > lo && next < hi && Math.abs(next - t) < last / 2)) {
                if (Math.abs(next - t) < TOLERANCE_S) {
                    return t;
                }
                next = (lo + hi) / 2;
            }
            last = Math.abs(next - t);
            if (last < TOLERANCE_S) {
                return next;
            }
            t = next;
        }
        return (lo + hi) / 2;
    }

    /** False position with the Illinois change, and a bisection now and then in case it stalls; ends when it stands. */
    private static double root(DoubleUnaryOperator f, double a, double fa, double b, double fb, double tolerance) {
        double lo = a;
        double flo = fa;
        double hi = b;
        double fhi = fb;
        double last = Double.NaN;
        for (int i = 0; hi - lo > tolerance; i++) {
            double t = i % 4 == 3 ? (lo + hi) / 2 : (lo * fhi - hi * flo) / (fhi - flo);
            if (!(t > lo && t < hi)) {
                t = (lo + hi) / 2;
            }
            double ft = f.applyAsDouble(t);
            if (ft == 0 || Math.abs(t - last) < tolerance) {
                return t;
            }
            last = t;
            if (ft > 0 == fhi > 0) {
                hi = t;
                fhi = ft;
                flo /= 2;
            } else {
                lo = t;
                flo = ft;
                fhi /= 2;
            }
        }
        return (lo + hi) / 2;
    }

    /**
     * The time of the highest value between {@code a} and {@code b} when the function rises at a
     * and falls at b; NaN when it does not.
     */
    static double peak(DoubleUnaryOperator f, double a, double b) {
        double lo = a + SLOPE_S;
        double hi = b - SLOPE_S;
        if (lo >= hi) {
            return Double.NaN;
        }
        // By the slope: near the top the function is too flat to compare its values.
        return top(t -> f.applyAsDouble(t + SLOPE_S) - f.applyAsDouble(t - SLOPE_S), lo, hi);
    }

    /** The time between {@code a} and {@code b} at which a positive slope turns negative; NaN when it does not. */
    static double top(DoubleUnaryOperator slope, double a, double b) {
        double slopeA = slope.applyAsDouble(a);
        double slopeB = slope.applyAsDouble(b);
        return a < b && slopeA > 0 && slopeB <= 0 ? root(slope, a, slopeA, b, slopeB, TOP_TOLERANCE_S) : Double.NaN;
    }
}
