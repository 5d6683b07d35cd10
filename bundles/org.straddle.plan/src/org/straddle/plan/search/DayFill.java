package org.straddle.plan.search;

import java.util.List;

import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/** Works more passes in the fixed stops of a team's day, then fills its gaps from morning to evening. */
final class DayFill {

    private final PlanProblem problem;
    private final Refill refill;
    private final TurnFill turnFill;

    DayFill(PlanProblem problem) {
        this.problem = problem;
        ChanceTable table = new ChanceTable(problem);
        refill = new Refill(problem, table);
        turnFill = new TurnFill(problem, table);
    }

    void fill(Roster roster, int day, Taste taste) {
        for (Stay stay : List.copyOf(roster.day(day))) {
            if (stay.fixed().isPresent() && stay.turns().isEmpty()) {
                turnFill.fill(roster, stay);
            }
        }
        for (Gap gap : Gap.between(problem, day, roster.day(day))) {
            refill.fill(roster, gap, taste).forEach(roster::add);
        }
    }
}
