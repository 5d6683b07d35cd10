package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.Waypoint;
import org.straddle.grid.MapFeature;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;

/** Two invented days: Hut, Gate, Fell, Hut; Hut, Moor, Inn. */
class TeamRouteTest {

    private final Event event = Fresh.event("Demo");
    private final Team team = Fresh.team();

    @BeforeEach
    void twoDays() {
        Base hut = base("Hut");
        Base inn = base("Inn");
        day("2027-06-18", hut, hut);
        day("2027-06-19", hut, inn);
        event.getTeams().add(team);
        stop("Fell", "2027-06-18T12:00:00Z");
        stop("Moor", "2027-06-19T09:00:00Z");
        stop("Gate", "2027-06-18T09:00:00Z");
    }

    private Base base(String name) {
        Base base = Fresh.base();
        base.setName(name);
        base.setLatitudeDeg(64);
        base.setLongitudeDeg(-21);
        event.getBases().add(base);
        return base;
    }

    private void day(String date, Base start, Base end) {
        TeamDay day = Fresh.teamDay(Instant.parse(date + "T08:00:00Z"), Instant.parse(date + "T20:00:00Z"), start, end);
        team.getDays().add(day);
    }

    private Stop stop(String name, String arrival) {
        Site site = Fresh.site();
        site.setName(name);
        site.setLatitudeDeg(64.5);
        site.setLongitudeDeg(-20);
        event.getSites().add(site);
        Stop stop = Fresh.stop(team, site, Instant.parse(arrival), Instant.parse(arrival).plusSeconds(3600));
        event.getPlan().getStops().add(stop);
        return stop;
    }

    @Test
    void fromBaseToBaseInOrderOfTime() throws ReadException {
        List<Waypoint> way = TeamRoute.of(event, team);
        assertEquals(List.of("Hut", "Gate", "Fell", "Hut", "Hut", "Moor", "Inn"), way.stream().map(Waypoint::name).toList());
        assertEquals("18 Jun 09:00Z to 18 Jun 10:00Z; ", way.get(1).description());
        MapFile read = MapReaderTest.read(WaypointWriter.gpxRoute("1 Demo", way));
        assertEquals("1 Demo", read.features().get(0).name());
        assertEquals(MapFeature.Shape.LINES, read.features().get(0).shape());
        assertEquals(7, read.features().get(0).size());
    }

    @Test
    void othersAndTheUnknownAreLeftOut() {
        event.getPlan().getStops().get(0).setSite(null);
        event.getPlan().getStops().get(1).setArrival(null);
        event.getPlan().getStops().get(2).setTeam(Fresh.team());
        assertEquals(List.of(), TeamRoute.of(event, team));
        event.getPlan().getStops().clear();
        stop("Nowhere", "2027-06-18T09:00:00Z").getSite().setLatitudeDeg(91);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> TeamRoute.of(event, team)).getMessage().contains("Nowhere"));
    }
}
