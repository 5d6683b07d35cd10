package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/**
 * The best plan of a tiny problem, found by trying all: every chance goes to some team or to nobody, and every stop
 * may end or go on. Fixed stops stay, and may take chances of their site as well.
 */
public final class EveryPlan {

    private static final Map<Long, Double> BEST_OF_TINY = new ConcurrentHashMap<>();

    private final PlanProblem problem;
    private final Predicate<List<Stay>> counts;
    private final List<Chance> chances;
    private double bestWorth = Double.NEGATIVE_INFINITY;
    private List<Stay> best = List.of();

    private EveryPlan(PlanProblem problem, Predicate<List<Stay>> counts) {
        this.problem = problem;
        this.counts = counts;
        chances = problem.chances().stream().sorted(Comparator.comparingInt(Chance::start)).toList();
    }

    /** What the best plan of {@link RandomProblem#tiny} is worth: asked by many tests, tried once. */
    public static double bestOfTiny(long seed) {
        return BEST_OF_TINY.computeIfAbsent(seed, any -> {
            PlanProblem tiny = RandomProblem.tiny(seed);
            return PlanRules.worth(tiny, best(tiny));
        });
    }

    public static List<Stay> best(PlanProblem problem) {
        return tried(problem, any -> true).best;
    }

    /** Worth of the best plan of some; negative infinity when there is none of them. */
    public static double bestWorth(PlanProblem problem, Predicate<List<Stay>> counts) {
        return tried(problem, counts).bestWorth;
    }

    private static EveryPlan tried(PlanProblem problem, Predicate<List<Stay>> counts) {
        EveryPlan every = new EveryPlan(problem, counts);
        every.tryFrom(0, new ArrayList<>(problem.fixed().stream().map(fixed -> Stay.of(fixed, List.of())).toList()));
        return every;
    }

    private void tryFrom(int next, List<Stay> stays) {
        if (!PlanRules.broken(problem, stays).isEmpty()) {
            return; // what breaks a rule breaks it however the plan goes on
        }
        if (next == chances.size()) {
            double worth = PlanRules.worth(problem, stays);
            if (worth > bestWorth && counts.test(stays)) {
                bestWorth = worth;
                best = List.copyOf(stays);
            }
            return;
        }
        tryFrom(next + 1, stays);
        Chance chance = chances.get(next);
        for (int day = 0; day < problem.days().size(); day++) {
            List<Stay> withNew = new ArrayList<>(stays);
            withNew.add(Stay.around(day, List.of(chance), problem.times()));
            tryFrom(next + 1, withNew);
            tryInFixed(next, stays, day, chance);
            Stay last = lastOf(stays, day);
            if (last != null && last.site() == chance.site()) {
                List<Chance> turns = new ArrayList<>(last.turns());
                turns.add(chance);
                List<Stay> longer = new ArrayList<>(stays);
                longer.remove(last);
                longer.add(Stay.around(day, turns, problem.times()));
                tryFrom(next + 1, longer);
            }
        }
    }

    private void tryInFixed(int next, List<Stay> stays, int day, Chance chance) {
        for (Stay stay : stays) {
            if (stay.fixed().isPresent() && stay.day() == day && stay.site() == chance.site()) {
                List<Chance> turns = new ArrayList<>(stay.turns());
                turns.add(chance);
                List<Stay> more = new ArrayList<>(stays);
                more.remove(stay);
                more.add(Stay.of(stay.fixed().get(), turns));
                tryFrom(next + 1, more);
            }
        }
    }

    private static Stay lastOf(List<Stay> stays, int day) {
        return stays.stream().filter(s -> s.day() == day && s.fixed().isEmpty()).max(Comparator.comparingInt(Stay::departure)).orElse(null);
    }
}
