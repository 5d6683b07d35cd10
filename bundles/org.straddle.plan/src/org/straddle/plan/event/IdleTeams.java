package org.straddle.plan.event;

import java.util.List;
import java.util.stream.IntStream;

import org.straddle.model.Team;
import org.straddle.plan.IdleTeam;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.search.Exchange;
import org.straddle.words.Catalogue;

/** Why teams have no stop in a plan: the first question that is answered with no. */
final class IdleTeams {

    private static final Catalogue TEXTS = Catalogue.of(IdleTeams.class);

    private IdleTeams() {
    }

    static List<IdleTeam> of(EventProblem event, List<PlannedStop> stops) {
        InReach reach = new InReach(event.problem(), new Exchange(event.problem()));
        return event.teams().stream().filter(team -> stops.stream().noneMatch(stop -> stop.team() == team))
                .map(team -> new IdleTeam(team, why(event, reach, team))).toList();
    }

    private static String why(EventProblem event, InReach reach, Team team) {
        PlanProblem problem = event.problem();
        int[] days = IntStream.range(0, problem.days().size())
                .filter(day -> event.teams().get(problem.days().get(day).team()) == team).toArray();
        if (days.length == 0) {
            return team.getDays().isEmpty() ? TEXTS.text("idleTeams.noDays") : TEXTS.text("idleTeams.noTime");
        }
        if (event.crews().forbidStops(team)) {
            return TEXTS.text("idleTeams.alone");
        }
        if (problem.chances().isEmpty()) {
            return TEXTS.text("idleTeams.nothingToWork");
        }
        boolean near = IntStream.of(days).anyMatch(day -> problem.chances().stream().anyMatch(chance -> reach.on(day, chance)));
        return TEXTS.text(near ? "idleTeams.notWorthIt" : "idleTeams.tooFar");
    }
}
