package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;

class DepartureGateTest {

    private final Event event = Fresh.event("Midsummer");
    private final Team team = Fresh.team();

    @BeforeEach
    void twoPeople() {
        event.getTeams().add(team);
        team.getOperators().addAll(List.of(Fresh.operator(), Fresh.operator()));
    }

    private void stop(String papers, String arrival) {
        Site site = SiteNotation.site(papers);
        event.getSites().add(site);
        Stop stop = Fresh.stop();
        stop.setTeam(team);
        stop.setSite(site);
        stop.setArrival(Instant.parse(arrival));
        event.getPlan().getStops().add(stop);
    }

    private DepartureGate gate() {
        return DepartureGate.of(event, team, day("06-20"), ZoneId.of("Asia/Tokyo"));
    }

    @Test
    void isOpenWhenEveryReviewHolds() {
        stop("review 06-01 by A", "2031-06-20T03:00:00Z");
        stop("review 06-01 by A if dry", "2031-06-20T05:00:00Z");
        assertTrue(gate().open());
        assertEquals(List.of("Gate: dry"), gate().conditions());
    }

    @Test
    void isShutByOneSiteWithoutAReview() {
        stop("review 06-01 by A", "2031-06-20T03:00:00Z");
        stop("", "2031-06-20T05:00:00Z");
        assertEquals(1, gate().reasons().size());
        assertTrue(gate().reasons().get(0).startsWith("Gate: Nobody signed a review"), gate().reasons().get(0));
    }

    /** Tokyo is 9 h ahead: its 20 June lasts from 15:00 UTC on the 19th to 15:00 on the 20th. */
    @Test
    void looksAtTheLocalDayOnly() {
        stop("", "2031-06-19T14:59:00Z");
        stop("", "2031-06-20T15:00:00Z");
        assertTrue(gate().open());
        stop("", "2031-06-19T15:00:00Z");
        assertEquals(1, gate().reasons().size());
    }

    @Test
    void isShutForOnePersonAloneUnlessThePolicyAllowsIt() {
        stop("review 06-01 by A", "2031-06-20T03:00:00Z");
        team.getOperators().remove(0);
        assertEquals(1, gate().reasons().size());
        event.getPolicies().setLoneOperatorAllowed(true);
        assertTrue(gate().open());
    }

    @Test
    void aDayWithoutStopsAsksForNothing() {
        team.getOperators().clear();
        assertTrue(gate().open());
        event.setPlan(null);
        assertTrue(gate().open());
    }
}
