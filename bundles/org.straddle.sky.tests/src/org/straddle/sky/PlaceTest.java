package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceTest {

    @ParameterizedTest
    @CsvSource({"90.1, 0, 0", "-91, 0, 0", "0, 180.5, 0", "0, -181, 0", "0, 0, 200000", "NaN, 0, 0", "0, NaN, 0", "0, 0, NaN"})
    void refuses(double latitudeDeg, double longitudeDeg, double altitudeM) {
        assertThrows(IllegalArgumentException.class, () -> new Place(latitudeDeg, longitudeDeg, altitudeM));
    }
}
