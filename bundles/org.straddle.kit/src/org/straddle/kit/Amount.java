package org.straddle.kit;

/** Weights, energies and draws as a file has them. */
final class Amount {

    private Amount() {
    }

    /** They are never negative: what a file says otherwise is taken as unknown, which is 0. */
    static double of(double value) {
        return Double.isFinite(value) && value > 0 ? value : 0;
    }
}
