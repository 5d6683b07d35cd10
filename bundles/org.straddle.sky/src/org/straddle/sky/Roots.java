package org.straddle.sky;

import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/** Times at which something changes sign, and where it is highest, between two times in seconds. */
final class Roots {

    /** A tenth of a microsecond: far below what the model is worth, far above rounding. */
    private static final double TOLERANCE_S = 1e-7;
    /** Half the base of the difference quotient that tells the slope's sign. */
    private static final double SLOPE_S = 0.005;

    private Roots() {
    }

    /**
     * The root between {@code a} and {@code b}, where {@code fa} and {@code fb} differ in sign:
     * false position with the Illinois change, and bisection when it stalls.
     */
    static double between(DoubleUnaryOperator f, double a, double fa, double b, double fb) {
        double lo = a;
        double flo = fa;
        double hi = b;
        double fhi = fb;
        for (int i = 0; i < 60 && hi - lo > TOLERANCE_S; i++) {
            double t = i % 4 == 3 ? (lo + hi) / 2 : (lo * fhi - hi * flo) / (fhi - flo);
            if (!(t > lo && t < hi)) {
                t = (lo + hi) / 2;
            }
            double ft = f.applyAsDouble(t);
            if (ft == 0) {
                return t;
            }
            if (ft > 0 == fhi > 0) {
                hi = t;
                fhi = ft;
                flo /= 2;
            } else {
                lo = t;
                flo = ft;
                fhi /= 2;
            }
            if (Math.abs(ft) < 1e-13) {
                return t;
            }
        }
        return (lo + hi) / 2;
    }

    /** The time between {@code a} and {@code b} at which a condition that holds at {@code a} and not at {@code b} ends. */
    static double lastTrue(DoublePredicate holds, double a, double b) {
        double lo = a;
        double hi = b;
        while (hi - lo > TOLERANCE_S) {
            double t = (lo + hi) / 2;
            if (holds.test(t)) {
                lo = t;
            } else {
                hi = t;
            }
        }
        return (lo + hi) / 2;
    }

    /** Whether the function grows at a time, from values on both sides that stay within {@code a} and {@code b}. */
    static boolean rises(DoubleUnaryOperator f, double t, double a, double b) {
        double before = Math.max(a, t - SLOPE_S);
        double after = Math.min(b, t + SLOPE_S);
        return f.applyAsDouble(after) > f.applyAsDouble(before);
    }

    /**
     * The time of the highest value between {@code a} and {@code b} when the function rises at a
     * and falls at b; NaN when it does not.
     */
    static double peak(DoubleUnaryOperator f, double a, double b) {
        if (b - a < 4 * SLOPE_S || !rises(f, a, a, b) || rises(f, b, a, b)) {
            return Double.NaN;
        }
        double lo = a;
        double hi = b;
        // Bisection on the slope: near the top the function is too flat to compare its values.
        while (hi - lo > 1e-4) {
            double t = (lo + hi) / 2;
            if (rises(f, t, a, b)) {
                lo = t;
            } else {
                hi = t;
            }
        }
        return (lo + hi) / 2;
    }
}
