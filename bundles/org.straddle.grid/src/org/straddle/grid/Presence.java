package org.straddle.grid;

import org.hipparchus.special.Erf;
import org.straddle.words.Catalogue;

/**
 * How likely a station really stands in every square it claims, given that each of its parts seems,
 * by its measured position, to stand a margin away from the line.
 *
 * <p>Errors of the position are taken as normal with the same standard deviation σ on both axes, so
 * R95 = 2.4477 σ. Two answers bracket the truth: the parts were measured apart, with independent
 * errors, Φ(d/σ)² for two parts with margin d; or both places come from one measurement, and the same
 * error shifts them together, 2Φ(d/σ) − 1. Consecutive readings of one receiver are closer to the
 * second, which is never the larger.
 *
 * @param independent probability if each part has an error of its own, 0 to 1
 * @param common probability if one error shifts all parts together, 0 to 1
 */
public record Presence(double independent, double common) {

    private static final Catalogue TEXTS = Catalogue.of(Presence.class);

    /** R95 / σ of a circular normal error: √(−2 ln 0.05). */
    public static final double R95_PER_SIGMA = Math.sqrt(-2 * Math.log(0.05));

    /**
     * On the line of two squares.
     *
     * @param r95M radius in metres that holds the true position in 95 % of cases, 0 or more
     * @param firstMarginM how far the first part is inside its square in metres; negative if it is on
     *     the wrong side
     * @param secondMarginM the same for the second part
     * @throws IllegalArgumentException if a value is not finite, or the error negative
     */
    public static Presence acrossLine(double r95M, double firstMarginM, double secondMarginM) {
        double first = inside(r95M, firstMarginM);
        double second = inside(r95M, secondMarginM);
        return new Presence(first * second, both(first, second));
    }

    /**
     * On the corner of four squares, with four parts at the corners of a rectangle: a part in each
     * square, as far from the meridian and the parallel as its neighbours.
     *
     * @param r95M as for {@link #acrossLine}
     * @param westM how far the western parts are west of the meridian, in metres
     * @param eastM how far the eastern parts are east of it
     * @param southM how far the southern parts are south of the parallel
     * @param northM how far the northern parts are north of it
     * @throws IllegalArgumentException if a value is not finite, or the error negative
     */
    public static Presence acrossCorner(double r95M, double westM, double eastM, double southM, double northM) {
        double west = inside(r95M, westM);
        double east = inside(r95M, eastM);
        double south = inside(r95M, southM);
        double north = inside(r95M, northM);
        double independent = Math.pow(west * east * south * north, 2);
        return new Presence(independent, both(west, east) * both(south, north));
    }

    /** The lower of the two: what can be argued whatever the errors have in common. */
    public double least() {
        return Math.min(independent, common);
    }

    private static double both(double first, double second) {
        return Math.max(0, first + second - 1);
    }

    /** Φ(margin/σ); without any error the sign decides, and the line itself counts as neither side. */
    private static double inside(double r95M, double marginM) {
        if (!(r95M >= 0) || !Double.isFinite(r95M) || !Double.isFinite(marginM)) {
            throw new IllegalArgumentException(TEXTS.text("presence.positionErrorM", "r95M", r95M, "marginM", marginM));
        }
        if (r95M == 0) {
            return marginM > 0 ? 1 : 0;
        }
        return Erf.erfc(-marginM / (r95M / R95_PER_SIGMA) / Math.sqrt(2)) / 2;
    }
}
