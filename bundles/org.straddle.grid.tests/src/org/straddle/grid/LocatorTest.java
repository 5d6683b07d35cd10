package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LocatorTest {

    /** Pairs of place and locator common in the trade; from memory, and reproduced by the formula. */
    @ParameterizedTest
    @CsvSource({"41.714775, -72.727260, FN31pr", "48.14666, 11.60833, JN58td", "-34.91, -56.21166, GF15vc",
        "38.92, -77.065, FM18lw", "-41.28333, 174.745, RE78ir"})
    void knownPlaces(double latitude, double longitude, String locator) {
        assertEquals(locator, Locator.of(new GeoPosition(latitude, longitude), 6).text());
    }

    /** Half-open edges, by the field, square and subsquare sizes of the IARU Region 1 VHF handbook. */
    @ParameterizedTest
    @CsvSource({"0, 0, JJ00aa", "42, -72, FN42aa", "41.9999999, -72.0000001, FN31xx", "-90, -180, AA00aa",
        "-1e-17, -1e-17, II99xx", "89.9999, 179.9999, RR99xx", "90, 0, JR09ax", "90, 180, AR09ax", "0, 180, AJ00aa",
        "-90, 179.9999, RA90xa"})
    void edges(double latitude, double longitude, String locator) {
        assertEquals(locator, Locator.of(new GeoPosition(latitude, longitude), 6).text());
    }

    /** Second witness: the conversion library @hamset/maidenhead-locator 0.2.1; see releng/fixtures/locators.mjs. */
    @ParameterizedTest
    @CsvFileSource(resources = "locators.csv", numLinesToSkip = 1)
    void agreesWithASecondWitness(double latitude, double longitude, String locator) {
        assertEquals(locator, Locator.of(new GeoPosition(latitude, longitude), 6).text());
    }

    @ParameterizedTest
    @CsvSource({"FN, 40, -80, 50, -60", "FN31, 41, -74, 42, -72", "JJ00aa, 0, 0, 0.041666666666666664, 0.08333333333333333",
        "JJ00aa00, 0, 0, 0.004166666666666667, 0.008333333333333333", "RR99, 89, 178, 90, 180"})
    void bounds(String text, double south, double west, double north, double east) {
        assertEquals(new GeoBounds(south, west, north, east), new Locator(text).bounds());
    }

    @Test
    void printsOneWay() {
        assertEquals("HP94bc12de", new Locator(" hp94BC12De ").toString());
        assertEquals(new Locator("HP94bc"), Locator.parse("hP94bC"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "H", "HP9", "HP94b", "SP94", "HS94", "HPA4", "HP94ya", "HP94ay", "HP94bc1",
        "HP94bc12d", "HP94bc12de1", "HP94bc12de11", "HP 94", "HP94\u0660a"})
    void whatIsNoLocatorIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> new Locator(text));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 5, 11, 12, -2})
    void lengthsThatDoNotExistAreRefused(int characters) {
        assertThrows(IllegalArgumentException.class, () -> Locator.of(new GeoPosition(0, 0), characters));
    }

    /** A position lies in its locator at every length, longer locators begin with the shorter, edges belong east and north. */
    @Test
    void lengthsAgreeEverywhere() {
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            GeoPosition position = new GeoPosition(random.nextDouble() * 180 - 90, random.nextDouble() * 360 - 180);
            String longest = Locator.of(position, 10).text();
            for (int characters = 2; characters <= 10; characters += 2) {
                Locator locator = Locator.of(position, characters);
                GeoBounds bounds = locator.bounds();
                assertTrue(bounds.contains(position));
                assertTrue(longest.toUpperCase().startsWith(locator.text().toUpperCase()), longest);
                assertEquals(locator, Locator.of(bounds.southWest(), characters));
                assertEquals(locator, Locator.of(locator.centre(), characters));
                GeoPosition lastInside = new GeoPosition(Math.nextDown(bounds.northDeg()), Math.nextDown(bounds.eastDeg()));
                assertEquals(locator, Locator.of(lastInside, characters));
            }
        }
    }
}
