package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.model.Policies;
import org.straddle.sky.Window;

class CheckInsTest {

    private static Window stay(String start, String end) {
        return new Window(Instant.parse("2031-06-20T" + start + ":00Z"), Instant.parse("2031-06-20T" + end + ":00Z"));
    }

    private static List<String> times(CheckIns calls) {
        return calls.times().stream().map(at -> at.toString().substring(11, 16)).toList();
    }

    @Test
    void onArrivalEveryHourAndBeforeLeaving() {
        CheckIns calls = CheckIns.of(stay("09:00", "11:30"), SiteNotation.policies());
        assertEquals(List.of("09:00", "10:00", "11:00", "11:30"), times(calls));
        assertEquals(Instant.parse("2031-06-20T09:15:00Z"), calls.actAt(calls.times().get(0)));
        assertEquals(List.of("09:00", "10:00", "11:05"), times(CheckIns.of(stay("09:00", "11:05"), SiteNotation.policies())),
                "11:00 would be five minutes before the last");
    }

    @Test
    void neverFartherApartThanTheEventAllowsByMoreThanTenMinutes() {
        Policies policies = SiteNotation.policies();
        for (int minutes = 5; minutes <= 120; minutes += 5) {
            policies.setCheckInMinutes(minutes);
            for (int length = 1; length <= 600; length += 13) {
                CheckIns calls = CheckIns.of(Window.of(Instant.parse("2031-06-20T09:00:00Z"), Duration.ofMinutes(length)), policies);
                for (int i = 1; i < calls.times().size(); i++) {
                    Duration apart = Duration.between(calls.times().get(i - 1), calls.times().get(i));
                    assertTrue(!apart.isNegative() && apart.toMinutes() <= minutes + 10, minutes + " " + calls);
                }
            }
        }
    }

    @Test
    void aFigureThatMakesNoSenseIsTheUsualOne() {
        Policies policies = SiteNotation.policies();
        policies.setCheckInMinutes(0);
        policies.setMissedCheckInMinutes(Double.NaN);
        assertEquals(CheckIns.of(stay("09:00", "11:30"), SiteNotation.policies()), CheckIns.of(stay("09:00", "11:30"), policies));
    }
}
