package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Leaves no pass unworked that a team could work where it is anyway, without giving anything up: the one that serves
 * most first.
 */
public final class FullStops {

    private final Roster roster;
    private final PlanProblem problem;

    private FullStops(Roster roster) {
        this.roster = roster;
        problem = roster.problem();
    }

    public static void fill(Roster roster) {
        FullStops full = new FullStops(roster);
        for (int day = 0; day < roster.problem().days().size(); day++) {
            List.copyOf(roster.day(day)).forEach(full::fill);
        }
    }

    private void fill(Stay stay) {
        Stay now = stay;
        List<Chance> possible = problem.chances().stream().filter(chance -> fits(chance, stay))
                .sorted(Comparator.comparingDouble((Chance chance) -> -gain(chance)).thenComparingInt(Chance::start)
                        .thenComparingInt(Chance::bird).thenComparingInt(Chance::end)).toList();
        for (Chance chance : possible) {
            if (gain(chance) > 0 && isFree(chance, now)) {
                List<Chance> turns = new ArrayList<>(now.turns());
                turns.add(chance);
                turns.sort(Comparator.comparingInt(Chance::start));
                Stay more = new Stay(now.day(), now.site(), now.arrival(), now.departure(), turns, now.fixed());
                roster.remove(now);
                roster.add(more);
                now = more;
            }
        }
    }

    private boolean fits(Chance chance, Stay stay) {
        return chance.site() == stay.site() && chance.start() >= problem.times().ready(stay.arrival())
                && chance.end() <= problem.times().packing(stay.departure())
                && problem.banned().allows(stay.day(), chance);
    }

    private boolean isFree(Chance chance, Stay stay) {
        return !roster.birdIsTaken(chance)
                && stay.turns().stream().allMatch(turn -> problem.times().areApart(turn, chance))
                && stay.fixedTurns().stream().allMatch(turn -> problem.times().areApart(turn, chance));
    }

    private double gain(Chance chance) {
        double sum = 0;
        for (int square : problem.squaresOfSite().get(chance.site())) {
            for (int g = 0; g < problem.groupCount(); g++) {
                sum += roster.owed(square, g) * chance.service().probability(g);
            }
        }
        return sum;
    }
}
