package org.straddle.ui.sky.pass;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeGrainTest {

    /** Never finer than the error, and never finer than a second. */
    @ParameterizedTest
    @CsvSource({"0.1, 1, 10:17:43", "1, 1, 10:17:43", "1.1, 2, 10:17:42", "2.1, 5, 10:17:45",
        "7, 10, 10:17:40", "11, 30, 10:17:30",
        "31, 60, 10:18", "70, 300, 10:20", "4000, 3600, 10:00"})
    void timesAreShownNoFinerThanTheyAreKnown(double errorS, long stepS, String shown) {
        TimeGrain grain = TimeGrain.of(errorS);
        assertEquals(Duration.ofSeconds(stepS), grain.step());
        assertEquals(shown, grain.utc(Instant.parse("2027-06-18T10:17:42.600Z")));
    }

    @Test
    void roundingMayReachTheNextDay() {
        assertEquals("00:00:00", TimeGrain.of(3).utc(Instant.parse("2027-06-18T23:59:58Z")));
        assertEquals(Instant.parse("2027-06-19T00:00:00Z"),
                TimeGrain.of(3).rounded(Instant.parse("2027-06-18T23:59:58Z")));
    }

    @Test
    void localTimeFollowsTheZone() {
        assertEquals("19:17:43", TimeGrain.of(1).local(Instant.parse("2027-06-18T10:17:42.600Z"),
                ZoneId.of("Asia/Tokyo")));
    }

    @ParameterizedTest
    @CsvSource({"1, PT11M50.4S, 11 min 50 s", "5, PT11M58S, 12 min 0 s", "60, PT11M50S, 12 min",
        "1, PT1H2M3S, 1 h 2 min"})
    void durationsAreRoundedAlike(double errorS, Duration duration, String words) {
        assertEquals(words, TimeGrain.of(errorS).words(duration));
    }
}
