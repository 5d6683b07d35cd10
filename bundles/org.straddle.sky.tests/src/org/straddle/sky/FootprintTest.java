package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values computed apart from this code from the plane triangle site, bird, centre of a sphere of 6371 km. */
class FootprintTest {

    @ParameterizedTest
    @CsvSource({"420, 0, 20.256, 2252, 2351", "420, 10, 12.497, 1390, 1492", "800, 0, 27.322, 3038, 3291",
        "800, 10, 18.962, 2108.5, 2366"})
    void reach(double altitudeKm, double elevationDeg, double angleDeg, double groundKm, double slantKm) {
        assertEquals(angleDeg, Footprint.centralAngleDeg(altitudeKm, elevationDeg), 0.001);
        assertEquals(groundKm, Footprint.groundRadiusKm(altitudeKm, elevationDeg), 0.6);
        assertEquals(slantKm, Footprint.slantRangeKm(altitudeKm, elevationDeg), 0.6);
    }

    @ParameterizedTest
    @CsvSource({"420, 90", "800, 90"})
    void overhead(double altitudeKm, double elevationDeg) {
        assertEquals(0, Footprint.groundRadiusKm(altitudeKm, elevationDeg), 1e-6);
        assertEquals(altitudeKm, Footprint.slantRangeKm(altitudeKm, elevationDeg), 1e-6);
    }

    /**
     * Largest Doppler shift, at the horizon of a non-rotating Earth of 6371 km: speed √(μ/r) times Re/r.
     * Published constants μ 398 600.4418 km³/s² (WGS-84) and c.
     */
    @ParameterizedTest
    @CsvSource({"420, 435, 10430", "420, 145.8, 3500", "800, 435, 9610"})
    void largestDoppler(double altitudeKm, double frequencyMhz, double shiftHz) {
        double r = Footprint.EARTH_RADIUS_KM + altitudeKm;
        double rate = -Math.sqrt(398_600.4418 / r) * Footprint.EARTH_RADIUS_KM / r;
        assertEquals(shiftHz, Doppler.shiftHz(frequencyMhz, rate), 6);
        assertEquals(-shiftHz, Doppler.shiftHz(frequencyMhz, -rate), 6);
    }
}
