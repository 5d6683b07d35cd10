package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClockTest {

    @ParameterizedTest
    @CsvSource({"PT0S, 10:02:11", "PT0.9S, 10:02:11", "PT1.1S, 10:02:10", "PT8S, 10:02:10", "PT20S, 10:02:00",
            "PT31S, 10:02", "PT61S, 10:02", "PT3M, 10:00", "PT6M, 10:00", "PT2H, 10:00"})
    void timesAreNoFinerThanTheirError(Duration error, String printed) {
        assertEquals(printed, new Clock(ZoneId.of("UTC"))
                .moment(Instant.parse("2031-06-20T10:02:11.2Z"), error, LocalDate.parse("2031-06-20")).utc());
    }

    @ParameterizedTest
    @CsvSource({"2031-06-20T10:02:29Z, 10:02", "2031-06-20T10:02:30Z, 10:03", "2031-06-20T23:59:45Z, 2031-06-21 00:00"})
    void minutesAreRoundedToTheNearest(Instant instant, String printed) {
        assertEquals(printed, new Clock(ZoneId.of("UTC")).minute(instant, LocalDate.parse("2031-06-20")).utc());
    }

    @Test
    void anotherDayIsPrintedInFull() {
        Moment evening = new Clock(ZoneId.of("America/St_Johns"))
                .minute(Instant.parse("2031-06-21T00:10:00Z"), LocalDate.parse("2031-06-20"));
        assertEquals("21:40", evening.local());
        assertEquals("2031-06-21 00:10", evening.utc());
    }
}
