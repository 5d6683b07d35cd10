package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeoPositionTest {

    @ParameterizedTest
    @CsvSource({"180, -180", "-180, -180", "190, -170", "-190, 170", "360, 0", "-360, 0", "179.999, 179.999",
        "-0.0, 0", "-180.00000000000003, 179.99999999999997"})
    void longitudeIsBroughtIntoOneTurn(double given, double held) {
        assertEquals(held, new GeoPosition(0, given).longitudeDeg());
    }

    @ParameterizedTest
    @CsvSource({"90.0000001, 0", "-90.0000001, 0", "NaN, 0", "0, NaN", "Infinity, 0", "0, -Infinity", "0, 360.1"})
    void whatIsNoPlaceIsRefused(double latitude, double longitude) {
        assertThrows(IllegalArgumentException.class, () -> new GeoPosition(latitude, longitude));
    }

    @Test
    void samePlaceIsEqual() {
        assertEquals(new GeoPosition(0.0, 180), new GeoPosition(-0.0, -180));
        assertEquals(new GeoPosition(0, 0.0), new GeoPosition(0, -0.0));
    }

    @Test
    void printsAndReadsBackExactly() {
        assertEquals("64.1466, -21.9426", new GeoPosition(64.1466, -21.9426).toString());
        assertEquals("0, -180", new GeoPosition(-0.0, 180).toString());
        assertEquals("0.0000001, 20", new GeoPosition(1e-7, 20).toString());
        Random random = new Random(1);
        for (int i = 0; i < 2000; i++) {
            GeoPosition position = new GeoPosition(random.nextDouble() * 180 - 90, random.nextDouble() * 360 - 180);
            assertEquals(position, GeoPosition.parse(position.toString()));
        }
    }
}
