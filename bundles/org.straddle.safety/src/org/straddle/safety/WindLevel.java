package org.straddle.safety;

/**
 * What wind means for masts, car doors and people. Bounds are common practice without a source, near the Beaufort steps: from 39 km/h
 * (force 6) masts come down, from 62 km/h (force 8) nobody sets up. A gust counts like a mean wind of two thirds of it. The maker of a mast may allow less.
 */
public enum WindLevel {
    NONE, MASTS_DOWN, NO_SET_UP;

    private static final double MASTS_DOWN_KMH = 39;
    private static final double NO_SET_UP_KMH = 62;
    private static final double GUST_FACTOR = 1.5;

    /**
     * @param windKmh mean wind; NaN when nobody knows it
     * @param gustKmh strongest gust; NaN when nobody knows it
     */
    public static WindLevel of(double windKmh, double gustKmh) {
        double counted = Math.max(Double.isNaN(windKmh) ? 0 : windKmh, Double.isNaN(gustKmh) ? 0 : gustKmh / GUST_FACTOR);
        return counted >= NO_SET_UP_KMH ? NO_SET_UP : counted >= MASTS_DOWN_KMH ? MASTS_DOWN : NONE;
    }
}
