package org.straddle.ui.sky.pass;

import java.util.List;

import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Window;

/** A team that works a pass, and which part of it. */
public record Worker(Stop stop, Turn turn, Window part) {

    /** Whether anybody works it. */
    public static boolean works(Event event, SitePass found) {
        return !of(event, found).isEmpty();
    }

    static List<Worker> of(Event event, SitePass found) {
        List<Stop> stops = event.getPlan() == null ? List.of() : event.getPlan().getStops();
        return stops.stream().filter(stop -> stop.getSite() == found.site() && stop.getTeam() != null)
                .flatMap(stop -> stop.getTurns().stream().filter(turn -> isTimed(turn)
                        && turn.getBird() == found.bird())
                        .flatMap(turn -> found.pass().window().intersection(new Window(turn.getStart(), turn.getEnd()))
                                .stream().map(part -> new Worker(stop, turn, part)))).toList();
    }

    private static boolean isTimed(Turn turn) {
        return turn.getStart() != null && turn.getEnd() != null && turn.getStart().isBefore(turn.getEnd());
    }
}
