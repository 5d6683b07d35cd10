package org.straddle.ui.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Stop;

class VisitDaysTest {

    private static final LocalDate TODAY = LocalDate.of(2031, 6, 1);

    private final Event event = Fresh.event("Ridge rove");
    private final Site site = Fresh.site();

    @BeforeEach
    void make() {
        event.getSites().add(site);
        event.setZone("Pacific/Auckland");
    }

    @Test
    void theDayOfTheFirstStopIsThatOfTheEventsClocks() {
        days("2031-06-20", "2031-06-22");
        stop("2031-06-21T22:00:00Z");
        stop("2031-06-20T13:00:00Z");
        assertEquals(LocalDate.of(2031, 6, 21), VisitDays.first(event, site, TODAY), "it is 01:00 of the 21st there");
    }

    @Test
    void withoutAStopItIsTheFirstDayOfTheEventAndWithoutDaysToday() {
        event.setFirstDay(null);
        assertEquals(TODAY, VisitDays.first(event, site, TODAY));
        days("2031-06-20", "2031-06-22");
        assertEquals(LocalDate.of(2031, 6, 20), VisitDays.first(event, site, TODAY));
    }

    @Test
    void daysOfTheEventTodayAndTheChosenOneAreOfferedOnceAndInOrder() {
        days("2031-06-20", "2031-06-22");
        assertEquals(List.of(TODAY, LocalDate.of(2031, 6, 20), LocalDate.of(2031, 6, 21), LocalDate.of(2031, 6, 22)),
                VisitDays.offered(event, LocalDate.of(2031, 6, 21), TODAY));
        days("2031-06-22", "2031-06-20");
        assertEquals(List.of(TODAY), VisitDays.offered(event, TODAY, TODAY), "days that are the wrong way round");
    }

    @Test
    void aSlipOfThePenMakesNoEndlessChoice() {
        days("2031-06-20", "2131-06-20");
        assertTrue(VisitDays.offered(event, TODAY, TODAY).size() < 40);
    }

    private void days(String first, String last) {
        event.setFirstDay(LocalDate.parse(first));
        event.setLastDay(LocalDate.parse(last));
    }

    private void stop(String arrival) {
        Stop stop = Fresh.stop();
        stop.setSite(site);
        stop.setArrival(Instant.parse(arrival));
        event.getPlan().getStops().add(stop);
    }
}
