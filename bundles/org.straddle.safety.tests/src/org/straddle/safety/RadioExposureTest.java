package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RadioExposureTest {

    /** 47 CFR 1.1310, table 1: mW/cm²; the last row from memory. */
    @ParameterizedTest
    @CsvSource({"30,1,0.2", "145,1,0.2", "300,1,0.2", "435,1.45,0.29", "1268,4.2267,0.8453", "2400,5,1"})
    void limits(double mhz, double controlled, double uncontrolled) {
        assertEquals(controlled, RadioExposure.CONTROLLED.limitMwCm2(mhz), 1e-4);
        assertEquals(uncontrolled, RadioExposure.UNCONTROLLED.limitMwCm2(mhz), 1e-4);
    }

    /** Computed from the formula of OET Bulletin 65 (from memory), not published values: W, dBi, MHz, m, m. */
    @ParameterizedTest
    @CsvSource({"50,10,145,3.19,7.14", "50,12,435,3.34,7.46", "5,10,435,0.84,1.87"})
    void distances(double powerW, double gainDbi, double mhz, double controlledM, double uncontrolledM) {
        assertEquals(controlledM, RadioExposure.CONTROLLED.distanceM(powerW, gainDbi, mhz), 0.005);
        assertEquals(uncontrolledM, RadioExposure.UNCONTROLLED.distanceM(powerW, gainDbi, mhz), 0.005);
    }

    /** 47 CFR 1.1307(b)(3)(i)(C), formulas from memory, values computed from them: MHz, m, W. */
    @ParameterizedTest
    @CsvSource({"145,3,34.5", "145,5,95.8", "145,10,383", "435,3,50.1", "435,5,139.2"})
    void exemptPower(double mhz, double distanceM, double watts) {
        assertEquals(watts, RadioExposure.exemptErpW(mhz, distanceM), 0.05);
    }

    @Test
    void theExemptionEndsWhereTheNearFieldBegins() {
        // λ/2π at 145 MHz is 0.329 m
        assertEquals(0.4, RadioExposure.exemptErpW(145, 0.33), 0.05);
        assertThrows(IllegalArgumentException.class, () -> RadioExposure.exemptErpW(145, 0.32));
        assertThrows(IllegalArgumentException.class, () -> RadioExposure.exemptErpW(2400, 5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {29, 100_001, Double.NaN})
    void refusesBandsWithoutAKnownLimit(double mhz) {
        assertThrows(IllegalArgumentException.class, () -> RadioExposure.CONTROLLED.distanceM(5, 10, mhz));
    }

    @Test
    void noPowerNeedsNoDistance() {
        assertEquals(0, RadioExposure.UNCONTROLLED.distanceM(0, 10, 145));
        assertThrows(IllegalArgumentException.class, () -> RadioExposure.CONTROLLED.distanceM(-1, 10, 145));
    }
}
