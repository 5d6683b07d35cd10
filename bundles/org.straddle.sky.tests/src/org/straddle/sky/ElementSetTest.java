package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ElementSetTest {

    /** Object 00005 of the verification set, AIAA 2006-6753. */
    private static final String ONE = "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753";
    private static final String TWO = "2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667";

    @Test
    void fields() {
        ElementSet set = ElementSet.ofTle("0 Five", ONE, TWO);
        assertEquals(new ElementSet("Five", 5, "1958-002B", Instant.parse("2000-06-27T18:50:19.733568Z"), 10.82419157,
                0.1859667, 34.2682, 348.7242, 331.7664, 19.3264, 0.28098e-4, 0.00000023, 0, 475, 41366), set);
    }

    /** Every verification set comes back column by column, but for the sign of a zero exponent and blanks for zero. */
    @Test
    void writesWhatItRead() {
        String one = null;
        int sets = 0;
        for (String line : Fixture.lines("sgp4-verification.txt")) {
            if (line.startsWith("1 ") && line.length() == 69) {
                one = line;
            } else if (line.startsWith("2 ") && line.length() == 69) {
                ElementSet set = ElementSet.ofTle("", one, line);
                List<String> written = set.toTleLines();
                assertEquals(set, ElementSet.ofTle("", written.get(0), written.get(1)));
                assertEquals(same(one), same(written.get(0)));
                assertEquals(same(line), same(written.get(1)));
                sets++;
            }
        }
        assertEquals(28, sets);
    }

    private static String same(String line) {
        String body = line.substring(0, 68).replace("00000+0", "00000-0");
        return body.charAt(0) == '1' ? body.substring(0, 62) + "0" + body.substring(63) : body;
    }

    /** Alpha-5: A is 10, H 17, J 18 (no I), N 22, P 23 (no O), Z 33. From memory of the published scheme. */
    @ParameterizedTest
    @CsvSource({"99999, 99999", "100000, A0000", "179999, H9999", "180000, J0000", "229999, N9999", "230000, P0000",
        "339999, Z9999"})
    void alpha5(int number, String columns) {
        ElementSet set = numbered(number);
        assertEquals(columns, set.toTleLines().get(0).substring(2, 7));
        assertEquals(number, ElementSet.ofTle("", set.toTleLines().get(0), set.toTleLines().get(1)).catalogueNumber());
    }

    private static ElementSet numbered(int number) {
        return new ElementSet("Tern-1 (demo)", number, "", Instant.parse("2031-06-20T00:00:00Z"), 14.5, 0.001, 98, 1, 2,
                3, -1.2345e-4, -1e-8, 0, 12, 34);
    }

    @Test
    void largeNumbersHaveNoRoom() {
        Exception e = assertThrows(ElementSetException.class, () -> numbered(340_000).toTleLines());
        assertTrue(e.getMessage().contains("Tern-1 (demo)") && e.getMessage().contains("340000"), e.getMessage());
    }

    /** Each fault with the words that name it. A fault that the checksum would hide comes with a fixed checksum. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4754 | Line 1: the checksum in column 69 is 4",
        "1 00005U 58002B   00179.78495063  .00000023  00000-0  28098-4 0  4753 | adds up to 4",
        "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  475 | 68 columns instead of 69 (cut off?)",
        "1 00006U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4754 | different objects: 00006 and 00005",
        "1 00005U 58002B   00367.78495062  .00000023  00000-0  28098-4 0  475 | columns 19–32 (epoch)",
        "1 00005U 58002B   00000.78495062  .00000023  00000-0  28098-4 0  475 | columns 19–32 (epoch)",
        "1 I0005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  475 | columns 3–7 (catalogue number)",
        "1 00005U 58002B   00179.78495062  .00000023  00000-0  2809x-4 0  475 | columns 54–61 (drag term B*)",
        "1 00005U 58002B  00179.78495062   .00000023  00000-0  28098-4 0  475 | column 18 must be blank",
        "2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667 | does not begin with 1"})
    void refusesLine1(String line, String words) {
        String text = line.strip();
        String fixed = text.length() == 68 && !words.contains("68") ? text + TleNotation.checksum(text + "0") : text;
        ElementSetException e = assertThrows(ElementSetException.class, () -> ElementSet.ofTle("", fixed, TWO));
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2 00005 134.26", "", "2", "\0\0\0", "2 00005 234.2682 348.7242 1859667 331.7664  19.3264 10.82419157413669",
        "2 00005  34.2682 348.7242 185 667 331.7664  19.3264 10.82419157413660"})
    void refusesLine2(String line) {
        assertThrows(ElementSetException.class, () -> ElementSet.ofTle("Five", ONE, line));
    }

    @Test
    void refusesAnyOneDigitChanged() {
        for (int column = 2; column < 69; column++) {
            char c = ONE.charAt(column);
            if (Character.isDigit(c)) {
                String changed = ONE.substring(0, column) + (char) ('0' + (c - '0' + 1) % 10) + ONE.substring(column + 1);
                assertThrows(ElementSetException.class, () -> ElementSet.ofTle("", changed, TWO));
            }
        }
    }

    @Test
    void refusesValuesOutOfRange() {
        ElementSetException e = assertThrows(ElementSetException.class, () -> new ElementSet("Tern-1 (demo)", 1, "",
                Invented.EPOCH, 14, 1.0, 98, 0, 0, 0, 0, 0, 0, 0, 0));
        assertTrue(e.getMessage().startsWith("Tern-1 (demo): The eccentricity"), e.getMessage());
        assertThrows(ElementSetException.class, () -> new ElementSet("", 1, "", Invented.EPOCH, Double.NaN, 0, 98, 0, 0, 0,
                0, 0, 0, 0, 0));
    }

    /** Two-digit years: 57 to 99 are of the 20th century, 00 to 56 of the 21st. From memory of the format's definition. */
    @Test
    void century() {
        assertEquals(1957, year("57"));
        assertEquals(1999, year("99"));
        assertEquals(2056, year("56"));
    }

    private static int year(String digits) {
        String line = ONE.substring(0, 18) + digits + ONE.substring(20, 68);
        return ElementSet.ofTle("", line + TleNotation.checksum(line + "0"), TWO).epoch().atOffset(
                java.time.ZoneOffset.UTC).getYear();
    }

    /**
     * The verification file of AIAA 2006-6753 has osculating semi-major axes of 8633.6 to 8635.9 km for this
     * object; perigee and apogee then follow from its eccentricity.
     */
    @Test
    void size() {
        ElementSet set = ElementSet.ofTle("", ONE, TWO);
        assertEquals(8634.5, set.semiMajorAxisKm(), 2);
        assertEquals(8634.5 * (1 - 0.1859667) - 6378.135, set.perigeeAltitudeKm(), 2);
        assertEquals(8634.5 * (1 + 0.1859667) - 6378.135, set.apogeeAltitudeKm(), 3);
    }
}
