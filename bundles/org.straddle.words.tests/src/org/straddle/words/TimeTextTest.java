package org.straddle.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Europe/Oslo        | 2031-06-21T10:02:00Z | 21 Jun 12:02 (10:02 UTC)
            Europe/Oslo        | 2031-06-21T10:02:03Z | 21 Jun 12:02:03 (10:02:03 UTC)
            Europe/Oslo        | 2031-06-21T22:30:00Z | 22 Jun 00:30 (21 Jun 22:30 UTC)
            Atlantic/Reykjavik | 2031-06-21T22:30:00Z | 21 Jun 22:30 UTC
            Europe/London      | 2031-06-21T22:30:00Z | 21 Jun 23:30 (22:30 UTC)
            Europe/London      | 2031-01-21T22:30:00Z | 21 Jan 22:30 UTC
            Pacific/Honolulu   | 2031-06-21T05:00:00Z | 20 Jun 19:00 (21 Jun 05:00 UTC)
            """)
    void anInstantIsLocalThenUtc(String zone, String instant, String expected) {
        assertEquals(expected, text(zone).at(Instant.parse(instant)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Europe/Oslo | 2031-06-21T10:02:00Z | PT12M   | 21 Jun 12:02–12:14 (10:02–10:14 UTC)
            Europe/Oslo | 2031-06-21T10:02:00Z | PT12.5S | 21 Jun 12:02:00–12:02:12 (10:02:00–10:02:12 UTC)
            Europe/Oslo | 2031-06-21T21:00:00Z | PT2H    | 21 Jun 23:00–22 Jun 01:00 (21:00–23:00 UTC)
            Europe/Oslo | 2031-06-21T22:30:00Z | PT2H    | 22 Jun 00:30–02:30 (21 Jun 22:30–22 Jun 00:30 UTC)
            UTC         | 2031-06-21T23:00:00Z | PT2H    | 21 Jun 23:00–22 Jun 01:00 UTC
            UTC         | 2031-06-21T23:00:00Z | PT0S    | 21 Jun 23:00 UTC
            """)
    void aWindowNamesEachDayOnce(String zone, Instant start, Duration length, String expected) {
        assertEquals(expected, text(zone).during(start, length));
    }

    private static TimeText text(String zone) {
        return TimeText.of(ZoneId.of(zone)).in(Language.ENGLISH);
    }
}
