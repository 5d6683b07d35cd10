package org.straddle.sky;

/**
 * A bird as seen from a place at an instant. Geometric: no refraction, no light time.
 *
 * @param azimuthDeg    from true north over east, 0 ≤ azimuth &lt; 360
 * @param elevationDeg  above the plane level at the place, −90 to 90
 * @param rangeKm       straight distance
 * @param rangeRateKmS  positive while the bird recedes, in the Earth-fixed frame
 */
public record Look(double azimuthDeg, double elevationDeg, double rangeKm, double rangeRateKmS) {

    /** Doppler shift of a signal from the bird, hertz; see {@link Doppler}. */
    public double dopplerHz(double frequencyMhz) {
        return Doppler.shiftHz(frequencyMhz, rangeRateKmS);
    }
}
