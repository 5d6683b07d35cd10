package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class PositionTextTest {

    /** 64° 08′ 48″ N, 21° 56′ 34.8″ W = 64.146667, -21.943 by hand: 8/60 + 48/3600 = 0.146667. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "64.146667, -21.943                  | decimal degrees",
        "64.146667,-21.943                   | decimal degrees",
        "64.146667 -21.943                   | decimal degrees",
        "+64.146667 -21.943                  | decimal degrees",
        "+64.146667-021.943/                 | decimal degrees",
        "64.146667; \u221221.943             | decimal degrees",
        "(64.146667 / -21.943)               | decimal degrees",
        "64.146667\u00b0 N, 21.943\u00b0 W   | decimal degrees",
        "64.146667N 21.943W                  | decimal degrees",
        "N64.146667 W21.943                  | decimal degrees",
        "21.943 W 64.146667 n                | decimal degrees",
        "W21.943, N64.146667                 | decimal degrees",
        "lat 64.146667 lon -21.943           | decimal degrees",
        "Latitude: 64.146667, Longitude: -21.943 | decimal degrees",
        "64,146667 -21,943                   | decimal degrees",
        "64,146667; -21,943                  | decimal degrees",
        "64,146667, -21,943                  | decimal degrees",
        "64,146667 N 21,943 W                | decimal degrees",
        "64\u00b008.80002' N 21\u00b056.58' W| degrees and minutes",
        "64 08.80002 -21 56.58               | degrees and minutes",
        "N 64 08.80002 W 021 56.58           | degrees and minutes",
        "64d08.80002'N 21d56.58'W            | degrees and minutes",
        "64\u00b008\u203248\u2033N 21\u00b056\u203234.8\u2033W | degrees, minutes, seconds",
        "64\u00b0 08' 48\" N, 21\u00b0 56' 34.8\" W | degrees, minutes, seconds",
        "64\u00b008'48''N 21\u00b056'34.8''W | degrees, minutes, seconds",
        "64\u00b008'48\" -21\u00b056'34.8\"  | degrees, minutes, seconds",
        "64:08:48N 021:56:34.8W              | degrees, minutes, seconds",
        "64 08 48 -21 56 34.8                | degrees, minutes, seconds",
        "64 08 48 N 21 56 34,8 W             | degrees, minutes, seconds"})
    void commonForms(String text, String form) {
        PositionText.ReadPosition read = PositionText.read(text);
        assertEquals(64.146667, read.position().latitudeDeg(), 4e-7);
        assertEquals(-21.943, read.position().longitudeDeg(), 4e-7);
        assertEquals(form + ": ", read.interpretation().substring(0, form.length() + 2));
    }

    @Test
    void theReadingIsToldBack() {
        assertEquals("degrees and minutes: 33.500000° S, 70.250000° W, square FF46",
                PositionText.read("33 30 S 70 15 W").interpretation());
        assertEquals("centre of locator HP94: 64.500000° N, 21.000000° W, square HP94",
                PositionText.read(" hp94 ").interpretation());
    }

    @Test
    void wholePartsAreExact() {
        assertEquals(new GeoPosition(-33.5, -70.25), GeoPosition.parse("33°30'S 70°15'W"));
        assertEquals(new GeoPosition(64, -20), GeoPosition.parse("64 00 00 N 20 00 00 W"));
        assertEquals(new GeoPosition(-0.5, 0.25), GeoPosition.parse("-0 30 0 15"));
        assertEquals(new GeoPosition(5, -180), GeoPosition.parse("5, 180"));
    }

    @ParameterizedTest
    @CsvSource({"HP94, 64.5, -21", "jj00aa, 0.02083333, 0.04166667", "HP94BC12, 64.09375, -21.9041666667",
        "AA00aa00aa, -89.99991319, -179.9998263889"})
    void aLocatorStandsForItsCentre(String text, double latitude, double longitude) {
        GeoPosition position = GeoPosition.parse(text);
        assertEquals(latitude, position.latitudeDeg(), 1e-8);
        assertEquals(longitude, position.longitudeDeg(), 1e-8);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "121.5, 37.2        | did you mean 37.2, 121.5?",
        "-121.5, 37.2       | did you mean 37.2, -121.5?",
        "121.5N 37.2E       | latitude 121.5",
        "121.5, 137.2       | latitude 121.5",
        "64.1, 181          | longitude 181",
        "64.1N 21.9         | one number only",
        "64.1N, 21.9S       | two values for latitude",
        "64.1E 21.9W        | two values for longitude",
        "-64.1N 21.9W       | a sign and a letter",
        "N64.1N 21.9W       | ",
        "64 60.0 N 21 0 W   | 60 or more",
        "64 08 60 N 21 0 0 W| 60 or more",
        "64.5 30 N 21 0 W   | fraction",
        "64,5 -21           | more than one way",
        "64,08,48,21        | more than one way",
        "38,6               | one number with a decimal comma",
        "-38,6              | one number with a decimal comma",
        "64.1               | not a latitude and a longitude",
        "64 08 48 21 56     | not a latitude and a longitude",
        "64.1.2, 21.9       | no angle",
        "1234567890123456, 5| no angle",
        "64.1, -21.9, 30    | more than two parts",
        "HP94b              | not a locator",
        "HP94zz             | not a locator",
        "lon -21.9 lat 64.1 | latitude first",
        "NaN, NaN           | ",
        "1e1, 5             | no angle",
        "here               | not a latitude and a longitude"})
    void whatIsUnclearIsRefusedWithAReason(String text, String reason) {
        String message = assertThrows(IllegalArgumentException.class, () -> PositionText.read(text)).getMessage();
        assertTrue(message.contains(reason == null ? "" : reason), message);
        assertTrue(message.contains("example"), message);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "   ", "\n\t"})
    void nothingIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> PositionText.read(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "64.146667, -21.943     | 64.146667° N, 21.943000° W | 64° 08.8000′ N, 21° 56.5800′ W | 64° 08′ 48.00″ N, 21° 56′ 34.80″ W",
        "-0.5, 180              | 0.500000° S, 180.000000° W | 0° 30.0000′ S, 180° 00.0000′ W | 0° 30′ 00.00″ S, 180° 00′ 00.00″ W",
        "9.99999999, -1.99999999| 10.000000° N, 2.000000° W  | 10° 00.0000′ N, 2° 00.0000′ W  | 10° 00′ 00.00″ N, 2° 00′ 00.00″ W",
        "-1e-9, -1e-9           | 0.000000° N, 0.000000° E   | 0° 00.0000′ N, 0° 00.0000′ E   | 0° 00′ 00.00″ N, 0° 00′ 00.00″ E"})
    void written(String position, String degrees, String minutes, String seconds) {
        String[] parts = position.split(",");
        GeoPosition place = new GeoPosition(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
        assertEquals(degrees, PositionText.write(place, PositionText.Form.DEGREES));
        assertEquals(minutes, PositionText.write(place, PositionText.Form.MINUTES));
        assertEquals(seconds, PositionText.write(place, PositionText.Form.SECONDS));
    }

    @Test
    void whatIsWrittenIsReadBack() {
        Random random = new Random(8);
        for (int i = 0; i < 2000; i++) {
            GeoPosition position = new GeoPosition(random.nextDouble() * 180 - 90, random.nextDouble() * 360 - 180);
            for (PositionText.Form form : PositionText.Form.values()) {
                GeoPosition read = GeoPosition.parse(PositionText.write(position, form));
                assertTrue(Geodesic.distanceM(position, read) < 0.4);
            }
        }
    }

    @Test
    void hostileTextIsRefusedShortly() {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            String huge = "1 ".repeat(10_000_000);
            String message = assertThrows(IllegalArgumentException.class, () -> PositionText.read(huge)).getMessage();
            assertTrue(message.length() < 300);
            Random random = new Random(7);
            String marks = "0123456789 .,;:'\"°NSEWnd+-/\u0000\u2032";
            for (int i = 0; i < 20_000; i++) {
                StringBuilder text = new StringBuilder();
                for (int n = random.nextInt(120); n >= 0; n--) {
                    text.append(marks.charAt(random.nextInt(marks.length())));
                }
                try {
                    PositionText.read(text.toString());
                } catch (IllegalArgumentException refusal) {
                    assertTrue(refusal.getMessage().length() < 400);
                }
            }
        });
    }
}
