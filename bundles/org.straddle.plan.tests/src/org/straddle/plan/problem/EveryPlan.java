package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/**
 * Every plan of a tiny problem: every chance goes to some team or to nobody, and every stop may end or go on. Fixed
 * stops stay, and may take chances of their site as well.
 */
public final class EveryPlan {

    private static final Map<Long, Double> BEST_OF_TINY = new ConcurrentHashMap<>();

    private record Worked(List<Stay> stays, double worth) {
    }

    private final PlanProblem problem;
    private final List<Chance> chances;
    private final List<Worked> plans = new ArrayList<>();

    private EveryPlan(PlanProblem problem) {
        this.problem = problem;
        chances = problem.chances().stream().sorted(Comparator.comparingInt(Chance::start)).toList();
    }

    /** None when the fixed stops alone break a rule. */
    public static EveryPlan of(PlanProblem problem) {
        EveryPlan every = new EveryPlan(problem);
        every.tryWith(0, problem.fixed().stream().map(fixed -> Stay.of(fixed, List.of())).toList());
        return every;
    }

    /** What the best plan of {@link RandomProblem#tiny} is worth: asked by many tests, tried once. */
    public static double bestOfTiny(long seed) {
        return BEST_OF_TINY.computeIfAbsent(seed, any -> {
            PlanProblem tiny = RandomProblem.tiny(seed);
            return PlanRules.worth(tiny, best(tiny));
        });
    }

    /** The best plan; empty when there is none. */
    public static List<Stay> best(PlanProblem problem) {
        return of(problem).plans.stream().reduce((one, other) -> other.worth() > one.worth() ? other : one)
                .map(Worked::stays).orElse(List.of());
    }

    /** Worth of the best plan of some; negative infinity when there is none of them. */
    public double bestWorth(Predicate<List<Stay>> counts) {
        return plans.stream().filter(plan -> counts.test(plan.stays())).mapToDouble(Worked::worth).max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private void tryWith(int next, List<Stay> stays) {
        if (PlanRules.areKept(problem, stays)) { // what breaks a rule breaks it however the plan goes on
            goOn(next, stays);
        }
    }

    private void goOn(int next, List<Stay> stays) {
        if (next == chances.size()) {
            plans.add(new Worked(List.copyOf(stays), PlanRules.worth(problem, stays)));
            return;
        }
        goOn(next + 1, stays);
        Chance chance = chances.get(next);
        for (int day = 0; day < problem.days().size(); day++) {
            List<Stay> withNew = new ArrayList<>(stays);
            withNew.add(Stay.around(day, List.of(chance), problem.times()));
            tryWith(next + 1, withNew);
            tryInFixed(next, stays, day, chance);
            Stay last = lastOf(stays, day);
            if (last != null && last.site() == chance.site()) {
                List<Chance> turns = new ArrayList<>(last.turns());
                turns.add(chance);
                List<Stay> longer = new ArrayList<>(stays);
                longer.remove(last);
                longer.add(Stay.around(day, turns, problem.times()));
                tryWith(next + 1, longer);
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
                tryWith(next + 1, more);
            }
        }
    }

    private static Stay lastOf(List<Stay> stays, int day) {
        return stays.stream().filter(s -> s.day() == day && s.fixed().isEmpty()).max(Comparator.comparingInt(Stay::departure)).orElse(null);
    }
}
