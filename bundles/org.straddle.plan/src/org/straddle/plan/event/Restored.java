package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.List;

import org.straddle.check.Promise;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;

/**
 * Holds proposed stops against what was published and is no longer in the present plan.
 *
 * @param stops  the same, with each turn marked that is just what was published
 * @param broken what nobody works as published, by start
 */
record Restored(List<PlannedStop> stops, List<HeldTurn> broken) {

    static Restored of(EventProblem event, List<PlannedStop> stops) {
        List<HeldTurn> broken = new ArrayList<>(event.held().all().stream().filter(held -> held.turn().isEmpty()).toList());
        List<PlannedStop> marked = stops.stream().map(stop -> stop.with(stop.turns().stream()
                .map(turn -> marked(event, stop, turn, broken)).toList())).toList();
        return new Restored(marked, List.copyOf(broken));
    }

    /** @param open what no turn restores yet; loses the one that this does */
    private static PlannedTurn marked(EventProblem event, PlannedStop stop, PlannedTurn turn, List<HeldTurn> open) {
        for (HeldTurn held : open) {
            Promise promise = held.published().orElseThrow();
            if (promise.isKeptBy(stop.team(), event.outlook().squares(stop.site()), turn.bird(), turn.window())) {
                open.remove(held);
                return turn.restoring(promise);
            }
        }
        return turn;
    }
}
