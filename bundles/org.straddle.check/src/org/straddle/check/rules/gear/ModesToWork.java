package org.straddle.check.rules.gear;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.straddle.check.rules.Inspection;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/** The modes of work that the plan asks of a team. */
public final class ModesToWork {

    private ModesToWork() {
    }

    static Set<WorkMode> of(Team team, Inspection in) {
        return in.itinerary().of(team).stream().flatMap(stay -> stay.turns().stream())
                .map(work -> work.bird().getMode()).collect(Collectors.toCollection(TreeSet::new));
    }
}
