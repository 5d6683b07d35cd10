package org.straddle.plan.search;

import java.util.List;

import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Fills a team's day: works more passes in its fixed stops, then fills its gaps from morning to evening; or, where work has
 * windows of time instead of passes, inserts it.
 */
final class DayFill {

    private final PlanProblem problem;
    private final Refill refill;
    private final TurnFill turnFill;
    private final Insertion insertion;

    DayFill(PlanProblem problem) {
        this.problem = problem;
        ChanceTable table = new ChanceTable(problem);
        refill = new Refill(problem, table);
        turnFill = new TurnFill(problem, table);
        insertion = new Insertion(problem);
    }

    void fill(Roster roster, int day, Taste taste) {
        if (!problem.windows().isEmpty()) {
            insertion.fill(roster, day, taste);
            return;
        }
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
