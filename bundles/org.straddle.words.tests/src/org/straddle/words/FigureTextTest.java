package org.straddle.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTextTest {

    private final FigureText figures = FigureText.in(Language.ENGLISH);

    @ParameterizedTest
    @CsvSource({"0, 0", "1.04, 1", "1.05, 1.1", "-0.04, 0", "-2.5, -2.5", "12345.6, 12345.6"})
    void atMostOneDecimal(double value, String expected) {
        assertEquals(expected, figures.atMost(1, value));
    }

    @ParameterizedTest
    @CsvSource({"12.44, 12.4 m", "999.94, 999.9 m", "1254, 1.25 km", "12540, 12.5 km"})
    void distances(double metres, String expected) {
        assertEquals(expected, figures.distance(metres));
    }

    @Test
    void figuresCarryTheirUnit() {
        assertEquals(List.of("145.9 MHz", "3.5 kg", "12°", "40 %"), List.of(figures.megahertz(145.9), figures.kilograms(3.52),
                figures.degrees(12.4), figures.percent(0.4)));
    }

    @Test
    void figuresFollowTheLanguage() {
        assertEquals("1,25 km", FigureText.in(Language.of("de")).distance(1254));
    }

    @ParameterizedTest
    @CsvSource({"PT0S, 0 min", "PT0.2S, 1 s", "PT20S, 20 s", "PT4M, 4 min", "PT2M30S, 2 min 30 s", "PT1H, 1 h",
        "PT1H5M9S, 1 h 5 min", "PT26H, 26 h"})
    void lengths(String length, String expected) {
        assertEquals(expected, LengthText.in(Language.ENGLISH).of(Duration.parse(length)));
    }

    @ParameterizedTest
    @CsvSource({"P1D, 1 day", "P14D, 14 days", "PT60H, 2.5 days", "PT10H, 0.42 days"})
    void days(String length, String expected) {
        assertEquals(expected, LengthText.in(Language.ENGLISH).days(Duration.parse(length)));
    }

    @Test
    void lists() {
        ListText list = ListText.in(Language.ENGLISH);
        assertEquals("", list.and(List.of()));
        assertEquals("A", list.and(List.of("A")));
        assertEquals("A and B", list.and(List.of("A", "B")));
        assertEquals("A, B or C", list.or(List.of("A", "B", "C")));
    }

    @Test
    void datesForPeople() {
        DateText dates = DateText.in(Language.ENGLISH);
        LocalDate day = LocalDate.of(2027, 6, 18);
        assertEquals(List.of("18 Jun 2027", "18 Jun", "Fri 18 Jun", "Friday 18 June 2027"),
                List.of(dates.of(day), dates.day(day), dates.weekday(day), dates.heading(day)));
    }
}
