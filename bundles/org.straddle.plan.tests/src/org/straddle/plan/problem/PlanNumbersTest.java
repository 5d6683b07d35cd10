package org.straddle.plan.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;

import org.junit.jupiter.api.Test;

import org.straddle.plan.PlanSettings;
import org.straddle.plan.event.ProblemClock;

class PlanNumbersTest {

    @Test
    void stopsRoundOutwardsToMinutes() {
        StationTimes times = new StationTimes(900, 600, 180);
        assertEquals(3600, times.arrivalFor(4500));
        assertEquals(3540, times.arrivalFor(4499));
        assertEquals(5400, times.departureAfter(4800));
        assertEquals(5460, times.departureAfter(4801));
        assertEquals(-960, times.arrivalFor(-1), "before the origin as well");
    }

    @Test
    void turnsRoundInwardsToSeconds() {
        ProblemClock clock = ProblemClock.from(Instant.parse("2031-06-21T06:00:42Z"));
        assertEquals(Instant.parse("2031-06-21T06:00:00Z"), clock.origin());
        assertEquals(61, clock.ceiling(Instant.parse("2031-06-21T06:01:00.001Z")));
        assertEquals(60, clock.floor(Instant.parse("2031-06-21T06:01:00.999Z")));
        assertEquals(-1, clock.floor(Instant.parse("2031-06-21T05:59:59.500Z")));
        assertEquals(0, clock.ceiling(Instant.parse("2031-06-21T05:59:59.500Z")));
    }

    @Test
    void repeatedPassesFallInWorth() {
        Tiers tiers = new Tiers(List.of(0.5, 0.25, 0.4));
        assertEquals(0.25, tiers.next(2), "a share above the one before it counts as that one");
        assertEquals(0, tiers.next(3));
        assertEquals(1.0, tiers.upTo(7));
        assertThrows(IllegalArgumentException.class, () -> new Tiers(List.of(Double.NaN)));
    }

    @Test
    void limitsOfASearchAreNotNegative() {
        assertThrows(IllegalArgumentException.class, () -> new PlanSettings(Duration.ofSeconds(-1), 1));
        assertThrows(IllegalArgumentException.class,
                () -> new PlanSettings(Duration.ofSeconds(1), 1, OptionalLong.of(-1)));
    }
}
