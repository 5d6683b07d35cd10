package org.straddle.ui.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotationTest {

    private final ZoneNames zones = new ZoneNames(() -> LocalDate.of(2027, 3, 27), () -> LocalDate.of(2027, 3, 28));
    private final Instants oslo = new Instants(() -> ZoneId.of("Europe/Oslo"),
            () -> Instant.parse("2027-06-19T12:00:00Z"));

    @ParameterizedTest
    @CsvSource({"5,5", "' 5.50 ',5.5", "'5,5',5.5", "\u22125,-5", "0,0", "1e2,100", ".5,0.5", "+5.,5"})
    void readsNumbers(String typed, double value) {
        assertEquals(value, Numbers.between(-10, 100).parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "five", "5d", "0x1p3", "NaN", "Infinity", "100.0001", "-10.1", "5,5,5", "1 000"})
    void refusesWhatIsNoNumberInRange(String typed) {
        String told = assertThrows(IllegalArgumentException.class, () -> Numbers.between(-10, 100).parse(typed))
                .getMessage();
        assertEquals("Enter a number from -10 to 100.", told);
    }

    /** A phone's 5 m hold 68 % and are 8.11 m at 95 %: √(ln 0.05 / ln 0.32) = 1.6214. */
    @ParameterizedTest
    @CsvSource({"5 95%,5", "5 m 95 %,5", "'5,0 m (95 %)',5", "5 phone,8.11", "5 68%,8.11", "5m CEP,10.4", "5 drms,8.66", "5 2DRMS,4.33",
        "5 ?,10.4"})
    void readsAnErrorByTheRadiusThatItIs(String typed, double r95M) {
        ErrorRadii radii = new ErrorRadii();
        assertEquals(r95M, radii.parse(typed), 1e-9);
        assertEquals(r95M, radii.parse(radii.print(radii.parse(typed))), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "5 m", "5 feet", "phone", "", "5 42%"})
    void asksWhichRadiusAnErrorIs(String typed) {
        String told = assertThrows(IllegalArgumentException.class, () -> new ErrorRadii().parse(typed)).getMessage();
        assertTrue(told.startsWith("Say which radius it is"), told);
    }

    @Test
    void writesNumbersWithoutExponentAndTrailingZeros() {
        assertEquals("0.000012", Numbers.plain(1.2e-5));
        assertEquals("145.99", Numbers.plain(145.990));
        assertEquals("0", Numbers.plain(-0.0));
    }

    @Test
    void showsWhatOnlyAFileCanBring() {
        assertEquals("NaN", Numbers.between(-10, 100).print(Double.NaN));
        assertEquals("-Infinity", Numbers.plain(Double.NEGATIVE_INFINITY));
        assertEquals("this zone is unknown", zones.told("Mars/Olympus"));
        assertEquals("this zone is unknown", zones.told(" "));
    }

    @Test
    void wholeNumbersHaveNoFraction() {
        assertEquals(7, Numbers.whole(1, 99).parse("7"));
        assertThrows(IllegalArgumentException.class, () -> Numbers.whole(1, 99).parse("7.5"));
        assertThrows(IllegalArgumentException.class, () -> Numbers.whole(1, 99).parse("100"));
    }

    /** Midsummer in Oslo is UTC+2 (IANA tz database). */
    @ParameterizedTest
    @CsvSource({"2027-06-20 10:02,2027-06-20T10:02:00Z", "2027-06-20T10:02:30Z,2027-06-20T10:02:30Z",
            "2027-6-20 1002,2027-06-20T10:02:00Z", "2027-06-20 10:02 L,2027-06-20T08:02:00Z",
            "10:02,2027-06-19T10:02:00Z", "1002L,2027-06-19T08:02:00Z"})
    void readsInstants(String typed, String instant) {
        assertEquals(Instant.parse(instant), oslo.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tomorrow", "2027-02-30 10:00", "2027-06-20 24:00", "10:60", "2027-06-20"})
    void refusesWhatIsNoInstant(String typed) {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> oslo.parse(typed)).getMessage()
                .contains("2026-06-20 10:02"));
    }

    @Test
    void timeAloneNeedsADay() {
        Instants unknown = new Instants(() -> ZoneId.of("UTC"), () -> null);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> unknown.parse("10:02")).getMessage()
                .startsWith("The day is missing."));
        assertNull(unknown.parse("  "));
    }

    @Test
    void instantsAreToldInLocalTime() {
        assertEquals("= Sun 20 Jun 12:02 in Europe/Oslo", oslo.told(Instant.parse("2027-06-20T10:02:00Z")));
        assertEquals("2027-06-20 10:02", oslo.print(Instant.parse("2027-06-20T10:02:00Z")));
        assertEquals("2027-06-20 10:02:07", oslo.print(Instant.parse("2027-06-20T10:02:07Z")));
    }

    @Test
    void datesAreReal() {
        assertEquals(LocalDate.of(2028, 2, 29), new Dates().parse("2028-2-29"));
        assertNull(new Dates().parse(""));
        assertThrows(IllegalArgumentException.class, () -> new Dates().parse("2027-02-29"));
        assertThrows(IllegalArgumentException.class, () -> new Dates().parse("20/6/2027"));
    }

    @Test
    void listsAndSquares() {
        assertEquals(List.of("2m", "70cm"), Listed.of(Words.any()).parse(" 2m, 70cm ,"));
        assertEquals("0.5, 0.25", Listed.of(Numbers.between(0, 1)).print(List.of(0.5, 0.25)));
        assertEquals(List.of("HP94", "IP04"), new SquareNames().parse("hp94 / IP04, HP94"));
        assertThrows(IllegalArgumentException.class, () -> new SquareNames().parse("HP94 HP9"));
    }

    @Test
    void positionsKeepTheirSixDecimals() {
        Positions notation = new Positions();
        assertEquals("64.146600, -21.942600", notation.print(notation.parse("64°08.796'N 21°56.556'W")));
        assertTrue(notation.told(notation.parse("HP94")).contains("square HP94"));
        // 1.5° into HP94 is 18 times 5′ (s), 0.5° is 12 times 2.5′ (m), and nothing is left over (00aa).
        for (String typed : List.of("64.5 -20.5", "64°30'N 20°30'W", "64 30 0 N, 20 30 0 W", "N64.5 W20.5")) {
            String told = notation.told(typed, notation.parse(typed));
            assertTrue(told.endsWith(": 64.500000° N, 20.500000° W, square HP94\n64° 30′ 00.00″ N, 20° 30′ 00.00″ W; locator HP94sm00aa"), told);
        }
        assertTrue(notation.told("64°30'N 20°30'W", notation.parse("64°30'N 20°30'W")).startsWith("degrees and minutes: "));
        assertTrue(notation.told("HP94sm", notation.parse("HP94sm")).startsWith("centre of locator HP94sm: "));
    }

    @Test
    void zonesAreKnown() {
        assertEquals("Atlantic/Reykjavik", zones.parse(" Atlantic/Reykjavik "));
        assertEquals("the same as UTC on 27 Mar 2027", zones.told("Atlantic/Reykjavik"));
        assertEquals("UTC+01:00 on 27 Mar 2027, UTC+02:00 on 28 Mar 2027", zones.told("Europe/Oslo"), "clocks go forward (IANA)");
        assertEquals("UTC-06:00 on 27 Mar 2027", zones.told("America/Denver"));
        assertThrows(IllegalArgumentException.class, () -> zones.parse("Iceland time"));
    }

    @Test
    void requiredWordsAreAskedFor() {
        assertEquals("Enter the site's name.", assertThrows(IllegalArgumentException.class,
                () -> Words.required("Enter the site's name.").parse(" ")).getMessage());
        assertNull(Words.any().parse(""));
    }

    @Test
    void readsWhatLicenceClassesMayUse() {
        Allowances notation = new Allowances();
        assertEquals("Full: 2m 70cm; Novice: 70cm", notation.print(notation.parse(" Full:2m, 70cm ;Novice : 70cm; ")));
        assertEquals(List.of(), notation.parse(" "));
    }

    @ParameterizedTest
    @CsvSource({"2m 70cm,names no licence class", "': 2m',names no licence class", "Full:,names no band"})
    void refusesAllowancesWithoutClassOrBand(String typed, String why) {
        String told = assertThrows(IllegalArgumentException.class, () -> new Allowances().parse(typed)).getMessage();
        assertTrue(told.contains(why) && told.contains("such as"), told);
    }
}
