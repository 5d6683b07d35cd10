package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Stay;

/**
 * The best further turns in a fixed stay at given prices: a dynamic programme over the chances that fit, by their
 * ends. Exact but for turns just before and after the stay, which may only make a plan poorer.
 */
final class FixedStayPricing {

    private static final int NONE = -1;

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

    /**
     * @param pay  of the next turn, by turns already added
     * @param cost of a turn, by chance
     */
    Best best(Stay stay, double[] pay, double[] cost) {
        FixedStay fixed = stay.fixed().orElseThrow();
        List<Integer> chances = chances(fixed);
        int most = pay.length;
        double[][] value = new double[chances.size()][most];
        int[][] from = new int[chances.size()][most];
        double bestValue = 0;
        int bestChance = NONE;
        int bestCount = 0;
        for (int i = 0; i < chances.size(); i++) {
            for (int k = 0; k < most; k++) {
                value[i][k] = k == 0 ? pay[0] - cost[chances.get(i)] : Double.NEGATIVE_INFINITY;
                from[i][k] = NONE;
                for (int j = 0; k > 0 && j < i; j++) {
                    double reached = value[j][k - 1] + pay[k] - cost[chances.get(i)];
                    if (follows(chances.get(j), chances.get(i)) && reached > value[i][k]) {
                        value[i][k] = reached;
                        from[i][k] = j;
                    }
                }
                if (value[i][k] > bestValue) {
                    bestValue = value[i][k];
                    bestChance = i;
                    bestCount = k;
                }
            }
        }
        List<Chance> turns = new ArrayList<>();
        for (int i = bestChance, k = bestCount; i != NONE; i = from[i][k--]) {
            turns.add(table.chance(chances.get(i)));
        }
        Collections.reverse(turns);
        return new Best(Stay.of(fixed, turns), bestValue);
    }

    private boolean follows(int earlier, int later) {
        return problem.times().follows(table.chance(earlier), table.chance(later));
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
