package org.straddle.ui.explorer;

import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.ui.things.Kind;

/** A heading in the explorer over all things of one kind. */
record Group(Kind kind) {

    static final List<Group> ALL = List.of(new Group(Kind.BASE), new Group(Kind.OPERATOR), new Group(Kind.TEAM),
            new Group(Kind.KIT), new Group(Kind.SITE), new Group(Kind.BIRD), new Group(Kind.STOP));

    /** Stops in the order they happen, everything else in the order it was entered. */
    List<Identified> things(Event event) {
        EObject home = home(event);
        if (home == null) {
            return List.of();
        }
        @SuppressWarnings("unchecked")
        List<Identified> things = (List<Identified>) home.eGet(kind.home());
        return kind == Kind.STOP ? things.stream().sorted(Comparator.comparing(
                thing -> ((Stop) thing).getArrival(), Comparator.nullsFirst(Comparator.naturalOrder()))).toList()
                : things;
    }

    /** The object whose list holds the things. */
    EObject home(Event event) {
        return kind == Kind.STOP ? event.getPlan() : event;
    }
}
