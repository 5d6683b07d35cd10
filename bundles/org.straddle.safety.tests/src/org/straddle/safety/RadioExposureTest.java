package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.ExposureLimits;

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

    /** ICNIRP reference levels, W/m²: 10 to 400 MHz 10 and 2; 400 to 2000 MHz f/40 and f/200; above 50 and 10 (secondary). */
    @ParameterizedTest
    @CsvSource({"145,10,2", "400,10,2", "435,10.875,2.175", "1200,30,6", "2000,50,10", "2400,50,10"})
    void icnirpCells(double mhz, double controlledWm2, double uncontrolledWm2) {
        assertEquals(controlledWm2, RadioExposure.CONTROLLED.limitWm2(ExposureLimits.ICNIRP, mhz), 1e-9);
        assertEquals(uncontrolledWm2, RadioExposure.UNCONTROLLED.limitWm2(ExposureLimits.ICNIRP, mhz), 1e-9);
    }

    /** The US limit at 435 MHz is a third higher than ICNIRP's: 50 W into 12 dBi keep 7.46 m by the one, 8.6 m by the other. */
    @Test
    void theStrictestLimitAsksForMore() {
        assertEquals(7.46, RadioExposure.UNCONTROLLED.distanceM(ExposureLimits.FCC, 50, 12, 435), 0.01);
        assertEquals(7.46 * Math.sqrt(2.9 / 2.175), RadioExposure.UNCONTROLLED.distanceM(ExposureLimits.STRICTEST, 50, 12, 435), 0.01);
    }

    @Test
    void neverNearerThanTheFormulaHolds() {
        assertEquals(299.792458 / 145 / (2 * Math.PI), RadioExposure.CONTROLLED.distanceM(ExposureLimits.FCC, 0.1, 0, 145), 1e-9);
    }
}
