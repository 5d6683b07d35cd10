package org.straddle.kit.team;

import java.time.Instant;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;

/** The least plan there is: one stop of an hour with one turn of ten minutes. */
final class OneTurn {

    private OneTurn() {
    }

    static void plan(Event event, Team team, Site site, Bird bird) {
        event.getSites().add(site);
        Stop stop = Fresh.stop(team, site, Instant.parse("2031-06-22T10:00:00Z"), Instant.parse("2031-06-22T11:00:00Z"));
        Turn turn = Fresh.turn(bird, Instant.parse("2031-06-22T10:20:00Z"), Instant.parse("2031-06-22T10:30:00Z"));
        stop.getTurns().add(turn);
        event.getPlan().getStops().add(stop);
    }
}
