package org.straddle.check.rules.people;

import java.util.List;

import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Itinerary;

/** The operators of a team that are there: references to removed operators do not count. */
public final class Crew {

    private Crew() {
    }

    static List<Operator> of(Team team) {
        return team.getOperators().stream().filter(operator -> !Itinerary.isMissing(operator)).toList();
    }
}
