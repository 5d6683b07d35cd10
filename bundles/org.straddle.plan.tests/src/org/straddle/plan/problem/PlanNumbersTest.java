package org.straddle.plan.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.Instant;
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
    void amountsAddUpWhereProbabilitiesDoNot() {
        Service one = Service.of(0.5, 0);
        Service other = Service.of(0.2, 1);
        assertEquals(1 - 0.5 * 0.8, -Math.expm1(-one.amount(0) - other.amount(0)), 1e-12);
        assertEquals(0, one.amount(1));
        assertEquals(Double.POSITIVE_INFINITY, other.amount(1));
        assertEquals(one, Service.of(0.5, 0));
        assertThrows(IllegalArgumentException.class, () -> Service.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Wants(new double[][] { { -1 } }, 1));
    }

    @Test
    void limitsOfASearchAreNotNegative() {
        assertThrows(IllegalArgumentException.class, () -> new PlanSettings(Duration.ofSeconds(-1), 1));
        assertThrows(IllegalArgumentException.class,
                () -> new PlanSettings(Duration.ofSeconds(1), 1, OptionalLong.of(-1)));
    }
}
