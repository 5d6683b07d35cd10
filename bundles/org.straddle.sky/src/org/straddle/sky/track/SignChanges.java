package org.straddle.sky.track;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The times at which a smooth function changes between positive and not, gathered piece by piece in
 * time order. A piece whose ends agree in sign is searched too when its slopes show a top or a dip
 * inside: a short pass lies there.
 */
public final class SignChanges {

    private final DoubleUnaryOperator f;
    private final List<Double> times = new ArrayList<>();
    /** Where the last piece ended: the next one begins there. */
    private double lastEnd = Double.NaN;
    private double atLastEnd;

    public SignChanges(DoubleUnaryOperator f) {
        this.f = f;
    }

    /** Takes the piece from {@code a} to {@code b}; the function has one top or dip in it at most. */
    void piece(double a, double b) {
        double fa = a == lastEnd ? atLastEnd : f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        lastEnd = b;
        atLastEnd = fb;
        if (fa > 0 != fb > 0) {
            times.add(Roots.between(f, a, fa, b, fb));
            return;
        }
        double turn = Roots.peak(fa > 0 ? t -> -f.applyAsDouble(t) : f, a, b);
        if (!Double.isNaN(turn)) {
            double atTurn = f.applyAsDouble(turn);
            if (atTurn > 0 != fa > 0) {
                times.add(Roots.between(f, a, fa, turn, atTurn));
                times.add(Roots.between(f, turn, atTurn, b, fb));
            }
        }
    }

    /** Takes every step of an even grid. */
    public void grid(double from, double to, double stepS) {
        for (double a = from; a < to;) {
            double b = Math.min(to, nextNode(a, stepS));
            piece(a, b);
            a = b;
        }
    }

    /** The next multiple of the step after {@code t}, and not one that rounding puts beside it. */
    static double nextNode(double t, double stepS) {
        return (Math.floor(t / stepS + 1e-9) + 1) * stepS;
    }

    /**
     * The spans on which the function is positive.
     *
     * @param shortestS shorter spans are rounding at a tangent and left out, seconds
     */
    public List<Span> positive(double from, double to, double shortestS) {
        List<Span> spans = new ArrayList<>();
        boolean up = f.applyAsDouble(from) > 0;
        double since = from;
        for (double t : times) {
            if (up) {
                add(spans, since, t, shortestS);
            }
            since = t;
            up = !up;
        }
        if (up) {
            add(spans, since, to, shortestS);
        }
        return spans;
    }

    private static void add(List<Span> spans, double from, double to, double shortestS) {
        if (to - from >= shortestS) {
            spans.add(new Span(from, to));
        }
    }
}
