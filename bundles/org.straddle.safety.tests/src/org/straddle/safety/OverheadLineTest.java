package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverheadLineTest {

    /** 29 CFR 1926.1408, table A: up to kV, ft. */
    @ParameterizedTest
    @CsvSource({"0,10", "50,10", "50.1,15", "200,15", "350,20", "500,25", "750,35", "1000,45"})
    void tableA(double kilovolts, double feet) {
        assertEquals(feet, OverheadLine.approachFt(kilovolts).orElseThrow());
    }

    @Test
    void aboveTheTableTheOwnerDecides() {
        assertTrue(OverheadLine.approachFt(1000.1).isEmpty());
    }

    /** 29 CFR 1910.333(c)(3): 10 ft, plus 4 in for each 10 kV above 50 kV. */
    @ParameterizedTest
    @CsvSource({"13.8,10", "50,10", "60,10.3333", "138,12.9333", "350,20"})
    void tenFeetAndFourInches(double kilovolts, double feet) {
        assertEquals(feet, OverheadLine.approachByVoltageFt(kilovolts), 1e-4);
    }

    /** US CPSC advice: one and a half times the height; no part within 10 ft when it falls. */
    @Test
    void aMastMissesTheLineWhenItFalls() {
        assertEquals(15, OverheadLine.antennaDistanceM(10));
        assertEquals(2 + 3.048, OverheadLine.antennaDistanceM(2), "a short mast still keeps 10 ft");
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "3.048", "5", "9.144", "20", "90"})
    void heightAndDistanceAnswerEachOther(double distanceM) {
        double heightM = OverheadLine.highestAntennaM(distanceM);
        assertEquals(Math.max(distanceM, 3.048), OverheadLine.antennaDistanceM(heightM), 1e-9);
    }

    @Test
    void refusesWhatIsNoLength() {
        assertThrows(IllegalArgumentException.class, () -> OverheadLine.antennaDistanceM(-1));
        assertThrows(IllegalArgumentException.class, () -> OverheadLine.approachFt(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> OverheadLine.highestAntennaM(Double.POSITIVE_INFINITY));
    }
}
