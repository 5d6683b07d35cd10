package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Works more passes in a stop whose times are fixed, where they pay: a dynamic programme over the chances by their ends.
 * Each keeps one way to reach it, the best so far.
 */
final class TurnFill {

    private static final int NONE = -1;

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
        List<Chance> turns = new ArrayList<>(best(roster, fixed, stay, chances(roster, fixed, ready, packUp)));
        if (!turns.isEmpty()) {
            roster.remove(stay);
            roster.add(Stay.of(fixed, turns));
        }
    }

    private List<Integer> chances(Roster roster, FixedStay fixed, int ready, int packUp) {
        List<Integer> chances = new ArrayList<>();
        for (int rank = table.rankEndedBy(fixed.site(), ready); rank < table.rankEndedBy(fixed.site(), packUp); rank++) {
            Chance chance = table.chance(table.atRank(rank));
            if (chance.start() >= ready && problem.banned().allows(fixed.day(), chance) && !roster.birdIsTaken(chance)
                    && fixed.turns().stream().allMatch(turn -> problem.times().areApart(chance, turn))) {
                chances.add(table.atRank(rank));
            }
        }
        return chances;
    }

    private List<Chance> best(Roster roster, FixedStay fixed, Stay stay, List<Integer> chances) {
        int groups = problem.groupCount();
        double[] value = new double[chances.size()];
        int[] before = new int[chances.size()];
        double[][] unserved = new double[chances.size()][groups];
        double[] fresh = new double[groups];
        Arrays.fill(fresh, 1);
        int best = NONE;
        for (int i = 0; i < value.length; i++) {
            Chance chance = table.chance(chances.get(i));
            value[i] = pay(roster, stay, chances.get(i), fresh);
            before[i] = NONE;
            for (int j = 0; j < i; j++) {
                if (problem.times().follows(table.chance(chances.get(j)), chance)) {
                    double reached = value[j] + pay(roster, stay, chances.get(i), unserved[j]);
                    if (reached > value[i]) {
                        value[i] = reached;
                        before[i] = j;
                    }
                }
            }
            for (int g = 0; g < groups; g++) {
                unserved[i][g] = (before[i] == NONE ? 1 : unserved[before[i]][g]) * (1 - chance.service().probability(g));
            }
            best = value[i] > (best == NONE ? 0 : value[best]) ? i : best;
        }
        List<Chance> turns = new ArrayList<>();
        for (int i = best; i != NONE; i = before[i]) {
            turns.add(0, table.chance(chances.get(i)));
        }
        return turns;
    }

    private double pay(Roster roster, Stay stay, int c, double[] left) {
        double sum = table.committed(stay.day(), c);
        for (int square : problem.squaresOfSite().get(stay.site())) {
            for (int g = 0; g < left.length; g++) {
                sum += roster.owed(square, g) * left[g] * table.chance(c).service().probability(g);
            }
        }
        return sum;
    }
}
