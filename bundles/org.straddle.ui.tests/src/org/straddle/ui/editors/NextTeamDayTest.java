package org.straddle.ui.editors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.Instant;
import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;

/** Oslo puts its clocks forward in the night to 28 March 2027 (IANA time zone database). */
class NextTeamDayTest {

    private final Event event = Fresh.event("Ridge rove");
    private final Team team = Fresh.team();

    NextTeamDayTest() {
        event.setZone("Europe/Oslo");
        event.setFirstDay(LocalDate.of(2027, 3, 27));
    }

    @Test
    void theFirstIsTheFirstOfTheEventFromItsOnlyBase() {
        Base base = StraddleFactory.eINSTANCE.createBase();
        event.getBases().add(base);
        TeamDay day = NextTeamDay.of(team, event);
        assertEquals(Instant.parse("2027-03-27T07:00:00Z"), day.getFrom());
        assertEquals(Instant.parse("2027-03-27T19:00:00Z"), day.getUntil());
        assertEquals(base, day.getStart());
        event.getBases().add(StraddleFactory.eINSTANCE.createBase());
        assertNull(NextTeamDay.of(team, event).getStart(), "which one is not known");
        event.setFirstDay(null);
        assertNull(NextTeamDay.of(team, event).getFrom());
    }

    @Test
    void theNextKeepsTheLocalHoursAndStartsWhereTheLastEnds() {
        TeamDay first = NextTeamDay.of(team, event);
        Base evening = StraddleFactory.eINSTANCE.createBase();
        first.setEnd(evening);
        team.getDays().add(first);
        TeamDay next = NextTeamDay.of(team, event);
        assertEquals(Instant.parse("2027-03-28T06:00:00Z"), next.getFrom(), "08:00 of summer time");
        assertEquals(evening, next.getStart());
    }
}
