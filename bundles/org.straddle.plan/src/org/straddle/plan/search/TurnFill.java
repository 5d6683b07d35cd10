package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Works as many more passes as pay in a stop whose times are fixed. With falling repeat worths every pass
 * from the same site pays alike, so the most passes are the best: take whichever ends first, again and
 * again, which is known to give the most (interval scheduling). What was committed comes first.
 */
final class TurnFill {

    private final PlanProblem problem;
    private final ChanceTable table;

    TurnFill(PlanProblem problem, ChanceTable table) {
        this.problem = problem;
        this.table = table;
    }

    /** Adds turns to a fixed stay in the roster. */
    void fill(Roster roster, Stay stay) {
        FixedStay fixed = stay.fixed().orElseThrow();
        int ready = problem.times().ready(fixed.arrival());
        int packUp = problem.times().packing(fixed.departure());
        List<Chance> turns = new ArrayList<>();
        int from = table.rankEndedBy(fixed.site(), ready);
        int to = table.rankEndedBy(fixed.site(), packUp);
        for (boolean committed : new boolean[] { true, false }) {
            for (int rank = from; rank < to; rank++) {
                Chance chance = table.chance(table.atRank(rank));
                boolean pays = committed ? table.committed(stay.day(), table.atRank(rank)) > 0
                        : pays(roster, fixed.site(), turns.size());
                if (pays && chance.start() >= ready && problem.banned().allows(stay.day(), chance)
                        && keepsGap(chance, fixed.turns()) && keepsGap(chance, turns) && !roster.birdIsTaken(chance)) {
                    turns.add(chance);
                }
            }
        }
        if (!turns.isEmpty()) {
            turns.sort(Comparator.comparingInt(Chance::start));
            roster.remove(stay);
            roster.add(Stay.of(fixed, turns));
        }
    }

    private boolean pays(Roster roster, int site, int more) {
        return problem.squaresOfSite().get(site).stream().anyMatch(square -> problem.demand().get(square) > 0
                && problem.tiers().next(roster.worked(square) + more) > 0);
    }

    private boolean keepsGap(Chance chance, List<Chance> others) {
        return others.stream().allMatch(turn -> problem.times().areApart(chance, turn));
    }
}
