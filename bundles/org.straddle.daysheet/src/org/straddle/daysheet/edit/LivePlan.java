package org.straddle.daysheet.edit;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Finds the things that an edit names, and refuses to touch what is pinned. */
record LivePlan(Event event) {

    private static final Catalogue TEXTS = Catalogue.of(LivePlan.class);

    Stop stop(String id) throws RefusedEdit {
        return find(stops().stream(), id, Literals.STOP);
    }

    Turn turn(String id) throws RefusedEdit {
        return find(stops().stream().flatMap(stop -> stop.getTurns().stream()), id, Literals.TURN);
    }

    boolean isStop(String id) {
        return stops().stream().anyMatch(stop -> stop.getId().equals(id));
    }

    Identified stopOrTurn(String id) throws RefusedEdit {
        return isStop(id) ? stop(id) : turn(id);
    }

    Team team(String id) throws RefusedEdit {
        return find(event.getTeams().stream(), id, Literals.TEAM);
    }

    Site site(String id) throws RefusedEdit {
        return find(event.getSites().stream(), id, Literals.SITE);
    }

    Bird bird(String id) throws RefusedEdit {
        return find(event.getBirds().stream(), id, Literals.BIRD);
    }

    /** @throws RefusedEdit when the stop itself is pinned */
    static void needLoose(Stop stop) throws RefusedEdit {
        if (stop.isPinned()) {
            throw new RefusedEdit(TEXTS.text("pinned", "thing", words(stop)));
        }
    }

    /** @throws RefusedEdit when the turn itself is pinned */
    static void needLoose(Turn turn) throws RefusedEdit {
        if (turn.isPinned()) {
            throw new RefusedEdit(TEXTS.text("pinned", "thing", words(turn)));
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
        return thing instanceof Turn turn
                ? TEXTS.text("turn", "turn", Naming.name(turn), "times", TimeText.zulu(turn.getStart(), turn.getEnd()))
                : Naming.name(thing);
    }

    private List<Stop> stops() {
        return event.getPlan() == null ? List.of() : event.getPlan().getStops();
    }

    private static <T extends Identified> T find(Stream<T> among, String id, EClass kind) throws RefusedEdit {
        return among.filter(thing -> thing.getId().equals(id)).findFirst().orElseThrow(() -> new RefusedEdit(
                TEXTS.text("gone", "kind", Naming.inCurrent().type(kind))));
    }
}
