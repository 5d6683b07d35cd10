package org.straddle.plan.bound;

/**
 * A bound on the share served {@code f(x) = 1 − e^(−x)} of the sum of what several routes contribute:
 * {@code f(Σ x) ≤ constant + Σ φ(x)}. The line that touches f at an amount τ is such a bound with a φ that is linear;
 * here φ follows the line only up to τ and then f itself less the constant: it is concave and 0 at 0, so
 * {@code φ(Σ x) ≤ Σ φ(x)}, and {@code constant + φ ≥ f} everywhere. One route that serves much therefore
 * never counts for more than it serves, and half of it never for more than half.
 *
 * @param at τ, not negative
 */
record Cut(double at) {

    /** Touches at 0: every route by itself. */
    static final Cut ALONE = new Cut(0);

    double slope() {
        return Math.exp(-at);
    }

    double constant() {
        return 1 - (1 + at) * Math.exp(-at);
    }

    /** φ. @param amount not negative, may be infinite */
    double of(double amount) {
        return amount <= at ? slope() * amount : -Math.expm1(-amount) - constant();
    }
}
