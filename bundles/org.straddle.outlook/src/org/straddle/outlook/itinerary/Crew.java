package org.straddle.outlook.itinerary;

import java.util.List;

import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.PolicyFigures;

/** The operators of a team that are there: references to removed operators do not count. */
public final class Crew {

    private Crew() {
    }

    public static List<Operator> of(Team team) {
        return team.getOperators().stream().filter(operator -> !Itinerary.isMissing(operator)).toList();
    }

    /** Whether the one operator of a team may not go out alone. Of a team without operators another rule tells. */
    public static boolean isAlone(Team team, PolicyFigures policies) {
        return !policies.loneOperatorAllowed() && of(team).size() == 1;
    }
}
