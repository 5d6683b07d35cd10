package org.straddle.sky.track;

import java.util.function.DoubleUnaryOperator;

/** Times at which something changes sign, and where it is highest, between two times in seconds. */
final class Roots {

    /** A microsecond: far below what the model is worth, far above rounding. */
    private static final double TOLERANCE_S = 1e-6;
    /** A top is flat: its time means less. */
    private static final double TOP_TOLERANCE_S = 1e-4;
    /** Half the base of the difference quotient that tells the slope's sign. */
    private static final double SLOPE_S = 0.005;

    /** More do not pay: the cubic is not the function. */
    private static final int CUBIC_STEPS = 3;

    private Roots() {
    }

    /** The root between {@code a} and {@code b}, where {@code fa} and {@code fb} differ in sign. */
    static double between(DoubleUnaryOperator f, double a, double fa, double b, double fb) {
        return root(f, a, fa, b, fb, TOLERANCE_S);
    }

    /** The same of a function whose slope is known, there and at both ends. */
    static double between(Curve f, double a, double fa, double slopeA, double b, double fb, double slopeB) {
        return between(f, a, fa, slopeA, b, fb, slopeB, TOLERANCE_S);
    }

    /**
     * Newton's steps from where the cubic through both ends has its root, and a bisection whenever one leaves the
     * interval or does not halve the step before it.
     */
    private static double between(Curve f, double a, double fa, double slopeA, double b, double fb, double slopeB,
            double tolerance) {
        double lo = a;
        double hi = b;
        double last = b - a;
        double t = a + last * rootOfCubic(fa, slopeA * last, fb, slopeB * last);
        while (hi - lo > tolerance) {
            double ft = f.at(t);
            if (ft > 0 == fb > 0) {
                hi = t;
            } else {
                lo = t;
            }
            double next = t - ft / f.slope();
            if (!(next > lo && next < hi && Math.abs(next - t) < last / 2)) {
                if (Math.abs(next - t) < tolerance) {
                    return t;
                }
                next = (lo + hi) / 2;
            }
            last = Math.abs(next - t);
            if (last < tolerance) {
                return next;
            }
            t = next;
        }
        return (lo + hi) / 2;
    }

    /** About where, from 0 to 1, the cubic with these values and slopes at 0 and 1 is zero. */
    private static double rootOfCubic(double f0, double slope0, double f1, double slope1) {
        double square = 3 * (f1 - f0) - 2 * slope0 - slope1;
        double cube = 2 * (f0 - f1) + slope0 + slope1;
        double x = f0 / (f0 - f1);
        for (int i = 0; i < CUBIC_STEPS; i++) {
            double next = x - (f0 + x * (slope0 + x * (square + x * cube))) / (slope0 + x * (2 * square + 3 * x * cube));
            if (!(next > 0 && next < 1)) {
                return x;
            }
            x = next;
        }
        return x;
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

    /** The same after a time of which the slope and its own slope are known. */
    static double topAfter(Curve slope, double a, double slopeA, double bendA, double b) {
        double slopeB = slope.at(b);
        return a < b && slopeA > 0 && slopeB <= 0
                ? between(slope, a, slopeA, bendA, b, slopeB, slope.slope(), TOP_TOLERANCE_S) : Double.NaN;
    }

    /** The same before such a time. */
    static double topBefore(Curve slope, double a, double b, double slopeB, double bendB) {
        double slopeA = slope.at(a);
        return a < b && slopeA > 0 && slopeB <= 0
                ? between(slope, a, slopeA, slope.slope(), b, slopeB, bendB, TOP_TOLERANCE_S) : Double.NaN;
    }
}
