package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverheadWiresTest {

    /** 29 CFR 1926.1408, table A: up to kV, ft; for a voltage that the owner named. */
    @ParameterizedTest
    @CsvSource({"0.1,10", "50,10", "50.1,15", "200,15", "200.1,20", "350,20", "350.1,25", "500,25", "500.1,35", "750,35", "750.1,45",
        "1000,45"})
    void tableA(double kilovolts, double feet) {
        assertEquals(feet, WireVoltage.fromOwner(kilovolts).approachFt().orElseThrow());
    }

    /**
     * 29 CFR 1926.1408(a)(2)(ii), from memory: 20 ft up to 350 kV where nobody asked for the voltage; 29 CFR 1926.1409(a):
     * 50 ft in its place above that, up to 1000 kV.
     */
    @ParameterizedTest
    @CsvSource({"0.4,20", "350,20", "350.1,50", "1000,50"})
    void aGuessedVoltageKeepsFartherAway(double kilovolts, double feet) {
        assertEquals(feet, WireVoltage.guessed(kilovolts).approachFt().orElseThrow());
    }

    @Test
    void anUnknownVoltageMayBeAny() {
        assertEquals(50, WireVoltage.unknown().approachFt().orElseThrow());
    }

    /** 29 CFR 1926.1408 table A and 1926.1409(b). */
    @Test
    void aboveTheTableTheOwnerDecides() {
        assertTrue(WireVoltage.fromOwner(1000.1).approachFt().isEmpty());
        assertTrue(WireVoltage.guessed(1000.1).approachFt().isEmpty());
        assertEquals(0, OverheadWires.highestM(1000, WireVoltage.fromOwner(1000.1)));
        assertTrue(OverheadWires.leastDistanceM(5, WireVoltage.fromOwner(1000.1)).isEmpty());
    }

    /** 29 CFR 1910.333(c)(3): 10 ft, plus 4 in for each 10 kV above 50 kV. */
    @ParameterizedTest
    @CsvSource({"13.8,10", "50,10", "60,10.3333", "138,12.9333", "350,20"})
    void tenFeetAndFourInches(double kilovolts, double feet) {
        assertEquals(feet, OverheadWires.approachByVoltageFt(kilovolts), 1e-4);
    }

    @Test
    void theTableAsksForNoLessThanTheFormula() {
        for (double kilovolts = 0.5; kilovolts <= 1000; kilovolts += 0.5) {
            assertTrue(WireVoltage.fromOwner(kilovolts).approachFt().orElseThrow()
                    >= OverheadWires.approachByVoltageFt(kilovolts) - 1e-9, kilovolts + " kV");
        }
    }

    /** US CPSC advice: one and a half times the height; no part within the approach when it falls. */
    @ParameterizedTest
    @CsvSource({"10,11,15", "2,11,5.048", "10,132,15", "8,132,12.572", "30,132,45", "12.4,400,20.02", "15,400,22.62", "20,400,30"})
    void aMastMissesTheWiresWhenItFalls(double heightM, double kilovolts, double distanceM) {
        assertEquals(distanceM, OverheadWires.leastDistanceM(heightM, WireVoltage.fromOwner(kilovolts)).orElseThrow(), 1e-9);
    }

    /** 400 kV keeps 25 ft, 7.62 m (table A): 20 m away a mast of 12.38 m, not the 13.3 m of the heights alone. */
    @Test
    void theApproachCountsBesideTheHeights() {
        assertEquals(20 - 25 * 0.3048, OverheadWires.highestM(20, WireVoltage.fromOwner(400)), 1e-12);
        assertTrue(OverheadWires.highestM(20, WireVoltage.fromOwner(400)) < 20 / 1.5);
    }

    @ParameterizedTest
    @CsvSource({"3.048", "5", "9.144", "20", "45.72", "90"})
    void heightAndDistanceAnswerEachOther(double distanceM) {
        for (WireVoltage voltage : new WireVoltage[] {WireVoltage.fromOwner(11), WireVoltage.fromOwner(400), WireVoltage.guessed(20),
            WireVoltage.unknown()}) {
            double heightM = OverheadWires.highestM(distanceM, voltage);
            double least = Math.max(distanceM, voltage.approachM().orElseThrow());
            assertEquals(least, OverheadWires.leastDistanceM(heightM, voltage).orElseThrow(), 1e-9, voltage.toString());
        }
    }

    @Test
    void theDistanceThatCountsIsLessMarkErrorAndHalfTheStation() {
        assertEquals(58, OverheadWires.countedDistanceM(65, 2, 10));
        assertEquals(0, OverheadWires.countedDistanceM(6, 4, 10), "a station that may stand under the wires");
    }

    @Test
    void refusesWhatIsNoLengthAndNoVoltage() {
        WireVoltage some = WireVoltage.fromOwner(20);
        assertThrows(IllegalArgumentException.class, () -> OverheadWires.leastDistanceM(-1, some));
        assertThrows(IllegalArgumentException.class, () -> WireVoltage.fromOwner(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> WireVoltage.guessed(0));
        assertThrows(IllegalArgumentException.class, () -> OverheadWires.highestM(Double.POSITIVE_INFINITY, some));
        assertThrows(IllegalArgumentException.class, () -> OverheadWires.countedDistanceM(10, Double.NaN, 1));
    }
}
