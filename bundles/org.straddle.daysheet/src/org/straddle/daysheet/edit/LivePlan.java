package org.straddle.daysheet.edit;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.things.ThingText;

/** Finds the things that an edit names, and refuses to touch what is pinned. */
record LivePlan(Event event) {

    private static final String LET_GO = "Let it go first.";

    Stop stop(String id) throws RefusedEdit {
        return find(stops().stream(), id, "stop");
    }

    Turn turn(String id) throws RefusedEdit {
        return find(stops().stream().flatMap(stop -> stop.getTurns().stream()), id, "turn");
    }

    boolean isStop(String id) {
        return stops().stream().anyMatch(stop -> stop.getId().equals(id));
    }

    Identified stopOrTurn(String id) throws RefusedEdit {
        return isStop(id) ? stop(id) : turn(id);
    }

    Team team(String id) throws RefusedEdit {
        return find(event.getTeams().stream(), id, "team");
    }

    Site site(String id) throws RefusedEdit {
        return find(event.getSites().stream(), id, "site");
    }

    Bird bird(String id) throws RefusedEdit {
        return find(event.getBirds().stream(), id, "bird");
    }

    /** @throws RefusedEdit when the stop itself is pinned */
    static void needLoose(Stop stop) throws RefusedEdit {
        if (stop.isPinned()) {
            throw new RefusedEdit("The stop of " + words(stop) + " is pinned.", LET_GO);
        }
    }

    /** @throws RefusedEdit when the turn itself is pinned */
    static void needLoose(Turn turn) throws RefusedEdit {
        if (turn.isPinned()) {
            throw new RefusedEdit("The turn " + words(turn) + " is pinned.", LET_GO);
        }
    }

    /** @throws RefusedEdit when any of the turns, which would lose their stop or change the team, is pinned */
    static void needLoose(Collection<Turn> turns) throws RefusedEdit {
        for (Turn turn : turns) {
            needLoose(turn);
        }
    }

    static Stop stopOf(Turn turn) {
        return (Stop) turn.eContainer();
    }

    static String words(Identified thing) {
        return ThingText.of(thing);
    }

    private List<Stop> stops() {
        return event.getPlan() == null ? List.of() : event.getPlan().getStops();
    }

    private static <T extends Identified> T find(Stream<T> among, String id, String word) throws RefusedEdit {
        return among.filter(thing -> thing.getId().equals(id)).findFirst().orElseThrow(() -> new RefusedEdit(
                "The " + word + " is not in the event any more.", "Choose another one."));
    }
}
