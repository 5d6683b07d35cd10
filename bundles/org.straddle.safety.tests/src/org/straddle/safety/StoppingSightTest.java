package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StoppingSightTest {

    /** Highway Engineering Handbook, table 2.2: design speed in mph, stopping sight distance in ft. */
    @ParameterizedTest
    @CsvSource({"20,115", "25,155", "30,200", "35,250", "50,425", "55,495", "60,570", "65,645"})
    void theHandbooksTableInFeet(double mph, int feet) {
        assertEquals(feet, StoppingSight.roundedUp(StoppingSight.feet(mph)));
    }

    /** Rows of the same table from memory. */
    @ParameterizedTest
    @CsvSource({"15,80", "40,305", "45,360", "70,730", "75,820", "80,910"})
    void moreOfItFromMemory(double mph, int feet) {
        assertEquals(feet, StoppingSight.roundedUp(StoppingSight.feet(mph)));
    }

    /** AASHTO's metric table, from memory: km/h, m. */
    @ParameterizedTest
    @CsvSource({"20,20", "30,35", "40,50", "50,65", "60,85", "70,105", "80,130", "90,160", "100,185", "110,220",
            "120,250", "130,285"})
    void theMetricTableFromMemory(double kmh, int metres) {
        assertEquals(metres, StoppingSight.roundedUp(StoppingSight.metres(kmh)));
    }

    /** The slope formula on level road differs from the plain one only by the rounding of its constants. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 45, 80})
    void theSlopeFormulaAgreesOnTheLevel(double mph) {
        assertEquals(StoppingSight.feet(mph), StoppingSight.feetOnGrade(mph, 0), 0.005 * StoppingSight.feet(mph));
    }

    @Test
    void downhillTakesLonger() {
        // computed from the formula: 1.47·50·2.5 + 50² / (30·(11.2/32.2 − 0.06)) = 183.75 + 289.49
        assertEquals(473.2, StoppingSight.feetOnGrade(50, -0.06), 0.1);
        assertThrows(IllegalArgumentException.class, () -> StoppingSight.feetOnGrade(50, -0.35));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoSpeed(double speed) {
        assertThrows(IllegalArgumentException.class, () -> StoppingSight.metres(speed));
        assertThrows(IllegalArgumentException.class, () -> StoppingSight.feet(speed));
    }

    @Test
    void standingStillNeedsNothing() {
        assertEquals(0, StoppingSight.roundedUp(StoppingSight.metres(0)));
    }
}
