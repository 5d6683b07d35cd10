package org.straddle.safety.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;

/** The figure of driving names whose limit binds: that of the event or that of a country. An hour's way there and one back. */
class WhoseLimitTest {

    private final Event event = Fresh.event("Border");
    private final Site site = Fresh.site();

    @BeforeEach
    void anHourEast() {
        event.setZone("UTC");
        event.getPolicies().setRoadSpeedKmh(60);
        event.getPolicies().setDetourFactor(1);
        Base base = Fresh.base();
        base.setLatitudeDeg(0.1);
        base.setLongitudeDeg(10.5);
        event.getBases().add(base);
        site.setLatitudeDeg(0.1);
        // a degree of the equator is 111.32 km
        site.setLongitudeDeg(10.5 + 60 / 111.32);
        event.getSites().add(site);
        Team team = Fresh.team();
        team.setNumber(1);
        TeamDay day = Fresh.teamDay(Instant.parse("2031-06-20T06:00:00Z"), Instant.parse("2031-06-20T20:00:00Z"), base, base);
        team.getDays().add(day);
        event.getTeams().add(team);
        Stop stop = Fresh.stop(team, site, Instant.parse("2031-06-20T10:00:00Z"), Instant.parse("2031-06-20T12:00:00Z"));
        event.getPlan().getStops().add(stop);
    }

    private String driving() {
        return SiteFigures.of(Outlook.of(event, null), site, Itinerary.of(event).at(site), LocalDate.parse("2031-06-20")).stream()
                .map(Figure::sentence).filter(sentence -> sentence.contains("wheel")).findFirst().orElseThrow();
    }

    @Test
    void theEventsWhereNoCountryIsStricter() {
        assertEquals("Team 1 is at the wheel for 2 h on 20 Jun 2031; this event allows 5 h. A break of 15 min is due after 2 h,"
                + " as this event asks.", driving());
    }

    @Test
    void theCountrysWhereItIs() {
        Jurisdiction country = Fresh.jurisdiction();
        country.setName("Skerrymark");
        country.getSquares().add("JJ50");
        country.setDrivingLimitMinutes(90);
        country.setBreakAfterMinutes(45);
        event.getJurisdictions().add(country);
        assertEquals("Team 1 is at the wheel for 2 h on 20 Jun 2031; that is more than the 1 h 30 min that Skerrymark allows: plan less."
                + " A break of 15 min is due after 45 min, as Skerrymark asks.", driving());
    }
}
