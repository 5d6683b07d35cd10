package org.straddle.sky;

/** Doppler shift of a radio link, first order in v/c: the next term is below 0.2 Hz at 435 MHz and 8 km/s. */
public final class Doppler {

    /** Speed of light, km/s, exact by the definition of the metre. */
    public static final double LIGHT_KM_S = 299_792.458;

    private Doppler() {
    }

    /**
     * How far a received signal lies above (positive) or below its transmitted frequency.
     *
     * @param frequencyMhz transmitted frequency, MHz
     * @param rangeRateKmS positive while the distance grows, km/s
     * @return shift, hertz; on the way up, send this much lower to be heard on frequency
     */
    public static double shiftHz(double frequencyMhz, double rangeRateKmS) {
        return -frequencyMhz * 1e6 * rangeRateKmS / LIGHT_KM_S;
    }
}
