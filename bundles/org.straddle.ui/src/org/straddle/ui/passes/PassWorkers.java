package org.straddle.ui.passes;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;

/**
 * Which teams work which passes. A pass does not know: the turns on the same bird at the same site that overlap it do.
 */
final class PassWorkers {

    private PassWorkers() {
    }

    /** Team names by pass; passes that nobody works are missing. */
    static Map<Pass, String> of(Event event, List<SitePass> passes) {
        Map<Pass, String> workers = new HashMap<>();
        List<Stop> stops = event.getPlan() == null ? List.of() : event.getPlan().getStops();
        for (SitePass found : passes) {
            stops.stream().filter(stop -> stop.getSite() == found.site() && stop.getTeam() != null)
                    .filter(stop -> stop.getTurns().stream().anyMatch(turn -> works(turn, found)))
                    .forEach(stop -> workers.merge(found.pass(), Naming.name(stop.getTeam()),
                            (a, b) -> a + ", " + b));
        }
        return workers;
    }

    private static boolean works(Turn turn, SitePass found) {
        return turn.getBird() == found.bird() && turn.getStart() != null && turn.getEnd() != null
                && turn.getStart().isBefore(found.pass().los()) && turn.getEnd().isAfter(found.pass().aos());
    }
}
