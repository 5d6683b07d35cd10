package org.straddle.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {

    @ParameterizedTest
    @CsvSource({"PT0S, 0 min", "PT0.2S, 1 s", "PT20S, 20 s", "PT4M, 4 min", "PT2M30S, 2 min 30 s", "PT1H, 1 h",
        "PT1H5M9S, 1 h 5 min", "PT26H, 26 h"})
    void lengths(Duration length, String expected) {
        assertEquals(expected, LengthText.in(Language.ENGLISH).of(length));
    }

    @ParameterizedTest
    @CsvSource({"P1D, 1 day", "P14D, 14 days", "PT60H, 2.5 days", "PT10H, 0.42 days"})
    void days(Duration length, String expected) {
        assertEquals(expected, LengthText.in(Language.ENGLISH).days(length));
    }

    @Test
    void lists() {
        ListText english = ListText.in(Language.ENGLISH);
        assertEquals("", english.and(List.of()));
        assertEquals("A", english.and(List.of("A")));
        assertEquals("A and B", english.and(List.of("A", "B")));
        assertEquals("A, B or C", english.or(List.of("A", "B", "C")));
    }
}
