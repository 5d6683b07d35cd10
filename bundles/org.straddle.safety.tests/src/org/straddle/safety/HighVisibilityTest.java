package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HighVisibilityTest {

    /** ISO 20471, after secondary pages on the standard: class 3 above 60 km/h, 2 up to 60, 1 up to 30. */
    @ParameterizedTest
    @CsvSource({"0,1", "30,1", "30.1,2", "60,2", "60.1,3", "130,3", "NaN,3"})
    void classBySpeed(double kmh, int number) {
        assertEquals(number, HighVisibility.atKmh(kmh).number());
    }
}
