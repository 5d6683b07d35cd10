package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HorizonTest {

    @ParameterizedTest
    @CsvSource({"0:5 90:12 180:3, 0, 5", "0:5 90:12 180:3, 45, 8.5", "0:5 90:12 180:3, 270, 4", "0:5 90:12 180:3, 360, 5",
        "0:5 90:12 180:3, -90, 4", "10:20 350:0, 0, 10", "10:20 350:0, 355, 5", "10:20 350:0, 180, 10", "30:7, 200, 7"})
    void runsStraightBetweenPointsAndAcrossNorth(String horizon, double azimuthDeg, double elevationDeg) {
        assertEquals(elevationDeg, Horizon.parse(horizon).elevationDegAt(azimuthDeg), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0:5 90:12 180:3, 0:5 90:12 180:3", "180:3  0:5, 0:5 180:3", "0:-0.5, 0:-0.5", "12.25:1.5, 12.25:1.5"})
    void writesTheShortNotationInOrder(String text, String printed) {
        assertEquals(printed, Horizon.parse(text).toString());
        assertEquals(Horizon.parse(text), Horizon.parse(printed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "0:", ":5", "0:5,90:12", "360:0", "-1:0", "0:91", "0:-31", "0:5 0:6", "0:NaN", "x:1",
        "0:1:2"})
    void refuses(String text) {
        assertThrows(IllegalArgumentException.class, () -> Horizon.parse(text));
    }

    @Test
    void namesTheBadPart() {
        Exception e = assertThrows(IllegalArgumentException.class, () -> Horizon.parse("0:5 ninety:12"));
        assertTrue(e.getMessage().contains("\"ninety:12\""), e.getMessage());
    }

    @Test
    void flat() {
        assertEquals("0:0", Horizon.flat(0).toString());
        assertTrue(Horizon.parse("0:3 90:3").isFlat());
        assertEquals(12, Horizon.parse("0:5 90:12").highestDeg());
        assertEquals(5, Horizon.parse("0:5 90:12").lowestDeg());
    }
}
