package org.straddle.grid;

import org.straddle.words.Catalogue;

/**
 * What a stated error of a position means: the radius of a circle about it that holds the true position with some
 * probability. Receivers and papers use different ones, and read as another the same number is too good by up to 2.4
 * times. All follow from a circular normal error with the standard deviation σ on each axis: the radius that holds a
 * share p is σ √(−2 ln (1 − p)).
 */
public enum ErrorRadius {
    /** Holds 95 %: what this program counts with. */
    R95(0.95),
    /** Holds 68 %: what the location services of phones state (from memory). */
    R68(0.68),
    /** Circular error probable: holds half. */
    CEP(0.5),
    /** Root of the mean square distance, √2 σ. */
    DRMS(1 - Math.exp(-1)),
    /** Twice that, 2√2 σ. */
    TWO_DRMS(1 - Math.exp(-4)),
    /**
     * A number on a display that does not say: taken for the smallest of them, so that the error is not made too good.
     */
    NOT_SAID(0.5);

    private static final Catalogue TEXTS = Catalogue.of(ErrorRadius.class);

    private final double share;

    ErrorRadius(double share) {
        this.share = share;
    }

    /** Such as "68 %, phones". */
    public String words() {
        return TEXTS.text(this);
    }

    /** How much of a circular normal error lies within it, 0 to 1. */
    public double share() {
        return share;
    }

    /** This radius over σ. */
    public double perSigma() {
        return Math.sqrt(-2 * Math.log1p(-share));
    }

    /**
     * The radius that holds 95 %.
     *
     * @param radiusM of this kind, metres, 0 or more
     * @throws IllegalArgumentException if the radius is negative or not finite
     */
    public double toR95M(double radiusM) {
        if (!(radiusM >= 0) || !Double.isFinite(radiusM)) {
            throw new IllegalArgumentException(TEXTS.text("errorRadius.radius", "radiusM", radiusM));
        }
        return this == R95 ? radiusM : radiusM * Presence.R95_PER_SIGMA / perSigma();
    }
}
