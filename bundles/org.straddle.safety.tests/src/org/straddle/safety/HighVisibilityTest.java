package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HighVisibilityTest {

    /**
     * ISO 20471, after secondary pages on the standard: class 3 above 60 km/h, 2 up to 60. Its class 1 is not for people
     * whose eyes and ears are elsewhere (ANSI/ISEA 107 and the MUTCD, secondary pages). Poor light: common practice, no
     * source.
     */
    @ParameterizedTest
    @CsvSource({"0,DAY,2", "30,DAY,2", "60,DAY,2", "60.1,DAY,3", "130,DAY,3", "NaN,DAY,3", "0,POOR,3", "50,POOR,3", "50,UNKNOWN,3",
        "130,POOR,3"})
    void classBySpeedAndLight(double kmh, Light light, int number) {
        assertEquals(number, HighVisibility.at(kmh, light).number());
    }
}
