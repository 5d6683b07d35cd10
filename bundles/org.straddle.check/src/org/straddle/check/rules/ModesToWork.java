package org.straddle.check.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/** The modes of work that the plan asks of a team. */
final class ModesToWork {

    private ModesToWork() {
    }

    static Map<Team, Set<WorkMode>> of(Itinerary itinerary) {
        Map<Team, Set<WorkMode>> modes = new LinkedHashMap<>();
        itinerary.byTeam().forEach((team, stays) -> modes.put(team, stays.stream()
                .flatMap(stay -> stay.turns().stream()).map(work -> work.bird().getMode())
                .collect(Collectors.toCollection(TreeSet::new))));
        return modes;
    }
}
