package org.straddle.publish;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Window;

/** Stops and turns fit to be put on a sheet; one that lacks a time or an object is left to the checks. */
final class Scheduled {

    private Scheduled() {
    }

    /** The stops of a team in order of arrival. */
    static List<Stop> stops(Event event, Team team) {
        return event.getPlan() == null ? List.of() : event.getPlan().getStops().stream()
                .filter(stop -> stop.getTeam() == team && stop.getSite() != null && stop.getArrival() != null
                        && stop.getDeparture() != null)
                .sorted(Comparator.comparing(Stop::getArrival)).toList();
    }

    /** The turns of a stop in order of their start. */
    static List<Turn> turns(Stop stop) {
        return stop.getTurns().stream()
                .filter(turn -> turn.getBird() != null && turn.getStart() != null && turn.getEnd() != null
                        && turn.getStart().isBefore(turn.getEnd()))
                .sorted(Comparator.comparing(Turn::getStart)).toList();
    }

    /** The pass that a turn takes the most of. */
    static Optional<SitePass> pass(Outlook outlook, Stop stop, Turn turn) {
        Window window = new Window(turn.getStart(), turn.getEnd());
        return outlook.passes(stop.getSite(), turn.getBird()).stream()
                .filter(p -> p.pass().window().overlaps(window))
                .max(Comparator.comparing(p -> p.pass().window().intersection(window).orElseThrow().duration()));
    }
}
