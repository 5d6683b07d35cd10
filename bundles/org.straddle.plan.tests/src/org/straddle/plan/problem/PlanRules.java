package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * The rules of a plan written down once more, without any of the planner's own tables: a plain reading of
 * every pair. What only fixed stays do to each other is left out.
 */
public final class PlanRules {

    private final PlanProblem problem;
    private final List<Stay> stays;
    /** Said only when somebody asks: of the plans that are tried most break a rule. */
    private final List<Supplier<String>> broken = new ArrayList<>();

    private PlanRules(PlanProblem problem, List<Stay> stays) {
        this.problem = problem;
        this.stays = stays;
    }

    /** Sentences about what is wrong; empty for a good plan. */
    public static List<String> broken(PlanProblem problem, List<Stay> stays) {
        return read(problem, stays).broken.stream().map(Supplier::get).toList();
    }

    public static boolean areKept(PlanProblem problem, List<Stay> stays) {
        return read(problem, stays).broken.isEmpty();
    }

    private static PlanRules read(PlanProblem problem, List<Stay> stays) {
        PlanRules rules = new PlanRules(problem, stays);
        stays.forEach(rules::checkStay);
        for (int i = 0; i < stays.size(); i++) {
            for (int j = 0; j < stays.size(); j++) {
                if (i != j && !(isFixed(stays.get(i)) && isFixed(stays.get(j)))) {
                    rules.checkPair(stays.get(i), stays.get(j));
                }
            }
        }
        rules.checkBirds();
        for (int day = 0; day < problem.days().size(); day++) {
            rules.checkDay(day);
        }
        for (FixedStay fixed : problem.fixed()) {
            long kept = stays.stream().filter(s -> s.fixed().isPresent() && s.fixed().get() == fixed
                    && s.arrival() == fixed.arrival() && s.departure() == fixed.departure()
                    && s.site() == fixed.site() && s.day() == fixed.day()).count();
            rules.require(kept == 1, () -> "fixed stay kept " + kept + " times: " + fixed);
        }
        return rules;
    }

    /** Reckoned from the definition, the long way. */
    public static double worth(PlanProblem problem, List<Stay> stays) {
        double worth = 0;
        for (int square = 0; square < problem.squareCount(); square++) {
            for (int group = 0; group < problem.wants().groups(); group++) {
                double nobody = 1;
                for (Stay stay : stays) {
                    if (problem.squaresOfSite().get(stay.site()).contains(square)) {
                        for (Chance turn : turns(stay)) {
                            nobody *= 1 - turn.service().probability(group);
                        }
                    }
                }
                worth += problem.wants().of(square, group) * (1 - nobody);
            }
        }
        for (int day = 0; day < problem.days().size(); day++) {
            worth -= problem.drivingPricePerHour() * driving(problem, stays, day) / 3600.0;
        }
        for (Stay stay : stays) {
            for (Chance turn : stay.turns()) {
                worth += problem.commitments().worth(stay.day(), turn);
            }
        }
        return worth;
    }

    private static int driving(PlanProblem problem, List<Stay> stays, int day) {
        int seconds = 0;
        int place = problem.days().get(day).startPlace();
        for (Stay stay : lane(stays, day)) {
            seconds += problem.roads().drivingSeconds(place, stay.site());
            place = stay.site();
        }
        return seconds + problem.roads().drivingSeconds(place, problem.days().get(day).endPlace());
    }

    private static List<Stay> lane(List<Stay> stays, int day) {
        return stays.stream().filter(s -> s.day() == day)
                .sorted((a, b) -> Integer.compare(a.arrival(), b.arrival())).toList();
    }

    private static boolean isFixed(Stay stay) {
        return stay.fixed().isPresent();
    }

    private static List<Chance> turns(Stay stay) {
        List<Chance> all = new ArrayList<>(stay.turns());
        stay.fixed().ifPresent(fixed -> all.addAll(fixed.turns()));
        all.sort((a, b) -> Integer.compare(a.start(), b.start()));
        return all;
    }

    private void checkStay(Stay stay) {
        StationTimes times = problem.times();
        require(isFixed(stay) || !stay.turns().isEmpty(), () -> "a stop without turns: " + stay);
        require(isFixed(stay) || stay.arrival() % 60 == 0 && stay.departure() % 60 == 0, () -> "not on minutes: " + stay);
        for (Chance turn : stay.turns()) {
            require(problem.chances().contains(turn), () -> "no such chance: " + turn);
            require(turn.site() == stay.site(), () -> "chance of another site: " + stay);
            require(turn.start() >= stay.arrival() + times.setUp(), () -> "no time to set up: " + stay);
            require(turn.end() + times.takeDown() <= stay.departure(), () -> "no time to take down: " + stay);
            require(problem.banned().allows(stay.day(), turn), () -> "banned: " + turn);
        }
        require(isFixed(stay) || problem.banned().before(stay.day(), stay.site(), stay.arrival(), stay.departure())
                != BannedTimes.BANNED, () -> "banned: " + stay);
    }

    private void checkPair(Stay a, Stay b) {
        boolean sameTeam = a.day() >= 0 && b.day() >= 0
                && problem.days().get(a.day()).team() == problem.days().get(b.day()).team();
        boolean atOnce = a.arrival() < b.departure() && b.arrival() < a.departure();
        require(!(atOnce && sameTeam), () -> "a team in two places: " + a + " " + b);
        TreeSet<Integer> shared = new TreeSet<>(problem.squaresOfSite().get(a.site()));
        shared.retainAll(problem.squaresOfSite().get(b.site()));
        require(!(atOnce && !shared.isEmpty()), () -> "a square twice at once: " + a + " " + b);
    }

    /** Sweeps over seconds at which something starts; what is fixed alone may be wrong already. */
    private void checkBirds() {
        for (Stay stay : stays) {
            for (Chance turn : stay.turns()) {
                long most = stays.stream().flatMap(s -> turns(s).stream()).filter(t -> t.bird() == turn.bird())
                        .filter(t -> t.start() >= turn.start() && t.start() < turn.end() || t == turn)
                        .mapToLong(t -> stays.stream().flatMap(s -> turns(s).stream())
                                .filter(u -> u.bird() == turn.bird() && u.start() <= t.start() && t.start() < u.end())
                                .count())
                        .max().orElse(0);
                require(most <= problem.teamsAtOnce().get(turn.bird()), () -> "bird shared by too many: " + turn);
            }
        }
    }

    private void checkDay(int day) {
        PlanDay route = problem.days().get(day);
        List<Stay> lane = lane(stays, day);
        int place = route.startPlace();
        int free = route.from();
        int lastTurn = Integer.MIN_VALUE;
        boolean fixed = true;
        for (Stay stay : lane) {
            if (!(fixed && isFixed(stay))) {
                require(isDriven(route, free, stay.arrival(), problem.roads().totalSeconds(place, stay.site())),
                        () -> "late at " + stay);
            }
            for (Chance turn : turns(stay)) {
                if (lastTurn != Integer.MIN_VALUE) {
                    require(lastTurn + problem.times().turnGap() <= turn.start(), () -> "turns too close at " + stay);
                }
                lastTurn = turn.end();
            }
            place = stay.site();
            free = stay.departure();
            fixed = isFixed(stay);
        }
        if (!fixed) {
            require(isDriven(route, free, route.until(), problem.roads().totalSeconds(place, route.endPlace())),
                    () -> "home late, day " + day);
        }
        checkRelief(day, lane);
        if (!lane.stream().allMatch(PlanRules::isFixed)) {
            require(driving(problem, stays, day) <= route.drivingLimit(), () -> "drives too long, day " + day);
        }
    }

    /** Stays at one site with less than the time away between them, and nothing else, are one. */
    private void checkRelief(int day, List<Stay> lane) {
        for (int first = 0; first < lane.size(); first++) {
            Stay from = lane.get(first);
            for (int last = first; last < lane.size() && !isFixed(lane.get(last)) && lane.get(last).site() == from.site()
                    && (last == first || lane.get(last).arrival() - lane.get(last - 1).departure() < problem.relief().away());
                    last++) {
                Stay until = lane.get(last);
                require(until.departure() - from.arrival() <= problem.relief().longest() || wasTold(day, from, until),
                        () -> "needs relief: " + from + " to " + until);
            }
        }
    }

    /** Some committed turns at the site, close enough together, begin no later and end no earlier. */
    private boolean wasTold(int day, Stay from, Stay last) {
        List<Stay> told = problem.commitments().of(day).stream().map(turn -> Stay.around(day, List.of(turn), problem.times()))
                .toList();
        for (int i = 0; i < told.size(); i++) {
            for (int j = i; j < told.size() && told.get(j).site() == from.site()
                    && (j == i || told.get(j).arrival() - told.get(j - 1).departure() < problem.relief().away()); j++) {
                if (told.get(i).arrival() <= from.arrival() && last.departure() <= told.get(j).departure()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Seconds between departure and arrival that no pause takes are enough for the drive. */
    private static boolean isDriven(PlanDay route, int departure, int arrival, int seconds) {
        int paused = route.pauses().stream().mapToInt(pause ->
                Math.max(0, Math.min(arrival, pause.until()) - Math.max(departure, pause.from()))).sum();
        return departure <= arrival && seconds <= arrival - departure - paused;
    }

    private void require(boolean holds, Supplier<String> otherwise) {
        if (!holds) {
            broken.add(otherwise);
        }
    }
}
