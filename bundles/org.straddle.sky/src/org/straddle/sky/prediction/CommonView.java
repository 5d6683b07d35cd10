package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;
import org.straddle.sky.track.Sightline;
import org.straddle.sky.track.SignChanges;
import org.straddle.sky.track.Span;

/**
 * A stretch of time in which a bird stands above the mask at one place and above an elevation somewhere in an
 * area: when the one can work the other.
 *
 * @param window      the time, clipped to what was asked about
 * @param best        when the lower of the two elevations is highest
 * @param hereDeg     elevation at the place then
 * @param thereDeg    elevation then at that place of the area that sees the bird highest
 */
public record CommonView(Window window, Instant best, double hereDeg, double thereDeg) {

    private static final double LONGEST_STEP_S = 30;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double BEST_TOLERANCE_S = 0.05;

    /** The lower of the two elevations, degrees. */
    public double lowerDeg() {
        return Math.min(hereDeg, thereDeg);
    }

    /**
     * All such times, in order.
     *
     * @param within   clipped to the predicted time
     * @param leastDeg elevation that the bird must stand above in the area, and here as well, besides the mask
     */
    public static List<CommonView> of(Ephemeris ephemeris, Viewpoint here, Area there, double leastDeg, Window within) {
        List<CommonView> views = new ArrayList<>();
        List<Window> up = Windows.common(ephemeris.above(here.place(), within, here.horizon()),
                ephemeris.above(here.place(), within, leastDeg));
        Sightline sight = new Sightline(here.place(), ephemeris.track());
        double[] state = new double[6];
        double sinLeast = Math.sin(Math.toRadians(leastDeg));
        DoubleUnaryOperator thereSin = t -> {
            ephemeris.track().state(t, state);
            return there.highestSinElevation(state);
        };
        DoubleUnaryOperator lower = t -> Math.min(sight.at(t).sinElevation(), thereSin.applyAsDouble(t));
        for (Window window : up) {
            double from = ephemeris.seconds(window.start());
            double to = ephemeris.seconds(window.end());
            SignChanges changes = new SignChanges(t -> thereSin.applyAsDouble(t) - sinLeast);
            changes.grid(from, to, Math.min(LONGEST_STEP_S, ephemeris.track().stepS()));
            for (Span span : changes.positive(from, to, 0.001)) {
                double best = highest(lower, span);
                views.add(new CommonView(new Window(ephemeris.instant(span.from()), ephemeris.instant(span.to())),
                        ephemeris.instant(best), Math.toDegrees(sight.at(best).elevation()),
                        Math.toDegrees(Math.asin(thereSin.applyAsDouble(best)))));
            }
        }
        return List.copyOf(views);
    }

    /** Where a function is highest: the best of even steps, then by golden section about it; it may have a kink. */
    private static double highest(DoubleUnaryOperator f, Span span) {
        int steps = Math.max(2, (int) Math.ceil(span.length() / LONGEST_STEP_S));
        int best = 0;
        double top = f.applyAsDouble(at(span, 0, steps));
        for (int i = 1; i <= steps; i++) {
            double value = f.applyAsDouble(at(span, i, steps));
            if (value > top) {
                best = i;
                top = value;
            }
        }
        double a = at(span, Math.max(0, best - 1), steps);
        double b = at(span, Math.min(steps, best + 1), steps);
        while (b - a > BEST_TOLERANCE_S) {
            double left = b - GOLDEN * (b - a);
            double right = a + GOLDEN * (b - a);
            if (f.applyAsDouble(left) > f.applyAsDouble(right)) {
                b = right;
            } else {
                a = left;
            }
        }
        return (a + b) / 2;
    }

    private static double at(Span span, int step, int steps) {
        return span.from() + span.length() * step / steps;
    }
}
