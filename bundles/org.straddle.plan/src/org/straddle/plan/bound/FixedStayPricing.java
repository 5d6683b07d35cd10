package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Stay;

/**
 * The best further turns in a fixed stay at given prices. Like {@link RoutePricing} it never errs to the low side, but for turns just before and after the stay, which may
 * only make a plan poorer.
 */
final class FixedStayPricing {

    private final PlanProblem problem;
    private final ChanceTable table;
    private final BirdMoments moments;

    FixedStayPricing(PlanProblem problem, ChanceTable table, BirdMoments moments) {
        this.problem = problem;
        this.table = table;
        this.moments = moments;
    }

    /** @param value of the further turns */
    record Best(Stay stay, double value) {
    }

    /** @param cost of a turn, by chance */
    Best best(Stay stay, StopPay stop, double[] cost) {
        FixedStay fixed = stay.fixed().orElseThrow();
        StopPay.Choice choice = stop.choice(chances(fixed).stream().map(stop::position).sorted().toList(), cost);
        return new Best(Stay.of(fixed, choice.turns()), choice.value());
    }

    private List<Integer> chances(FixedStay fixed) {
        int ready = problem.times().ready(fixed.arrival());
        int packUp = problem.times().packing(fixed.departure());
        List<Integer> chances = new ArrayList<>();
        for (int rank = table.firstRank(fixed.site()); rank < table.firstRank(fixed.site() + 1); rank++) {
            int c = table.atRank(rank);
            Chance chance = table.chance(c);
            if (chance.start() >= ready && chance.end() <= packUp && !moments.isBlocked(c)
                    && problem.banned().allows(fixed.day(), chance) && fixed.turns().stream()
                    .allMatch(turn -> problem.times().areApart(chance, turn))) {
                chances.add(c);
            }
        }
        return chances;
    }
}
