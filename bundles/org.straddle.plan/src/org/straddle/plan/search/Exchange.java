package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;

/**
 * The cheapest way that is found to work a square which a plan leaves out: one pass from it goes in, what is in its way
 * goes out, and the days that lose something are filled anew. Not the cheapest there is: only the most promising few of
 * all passes are tried, and each day is filled by itself.
 */
public final class Exchange {

    /** So many ways are tried to the end for one square; each takes milliseconds. */
    private static final int TRIES = 6;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final DayFill dayFill;
    private final Taste plain;

    public Exchange(PlanProblem problem) {
        this.problem = problem;
        table = new ChanceTable(problem);
        dayFill = new DayFill(problem);
        plain = Taste.plain(problem);
    }

    /**
     * A way to work the square.
     *
     * @param turn the pass that works it
     * @param cost of worth; below 0 when the plan becomes better
     * @param plan by day
     */
    public record Way(int day, Chance turn, double cost, List<Route> plan) {

        public void applyTo(Roster roster) {
            for (Route route : plan) {
                roster.restore(route.day(), List.of());
            }
            plan.forEach(route -> roster.restore(route.day(), route.stays()));
        }
    }

    private record Attempt(Stay stay, List<Stay> leaving, double loss) {
    }

    /** Whether no ban keeps a day from working a chance in a stop of its own. */
    public boolean allows(int day, Chance chance) {
        return table.bannedBefore(day, table.indexOf(chance)) != BannedTimes.BANNED;
    }

    /** Empty when no pass from the square fits beside what is fixed. The plan is left as it was. */
    public Optional<Way> best(Roster roster, int square) {
        double worth = roster.worth();
        List<Route> before = routes(roster);
        List<Way> ways = new ArrayList<>();
        for (Attempt attempt : attempts(roster, square)) {
            way(roster, attempt, worth).ifPresent(ways::add);
            for (Route route : before) {
                roster.restore(route.day(), List.of());
            }
            before.forEach(route -> roster.restore(route.day(), route.stays()));
        }
        return ways.stream().min(Comparator.comparingDouble(Way::cost));
    }

    private static List<Route> routes(Roster roster) {
        List<Route> routes = new ArrayList<>();
        for (int day = 0; day < roster.problem().days().size(); day++) {
            routes.add(roster.route(day));
        }
        return routes;
    }

    private List<Attempt> attempts(Roster roster, int square) {
        List<Attempt> attempts = new ArrayList<>();
        for (Chance chance : problem.chances()) {
            if (problem.squaresOfSite().get(chance.site()).contains(square)) {
                for (int day = 0; day < problem.days().size(); day++) {
                    PlanDay out = problem.days().get(day);
                    if (out.from() <= chance.start() && chance.end() <= out.until() && allows(day, chance)) {
                        attempt(roster, Stay.around(day, List.of(chance), problem.times())).ifPresent(attempts::add);
                    }
                }
            }
        }
        attempts.sort(Comparator.comparingDouble(Attempt::loss));
        return attempts.subList(0, Math.min(TRIES, attempts.size()));
    }

    /** What has to leave for a stay; empty when something fixed does not let it in. */
    private Optional<Attempt> attempt(Roster roster, Stay stay) {
        Set<Stay> leaving = new LinkedHashSet<>();
        int place = problem.days().get(stay.day()).startPlace();
        int free = problem.days().get(stay.day()).from();
        for (Stay other : roster.day(stay.day())) {
            boolean fits = other.departure() <= stay.arrival()
                    ? problem.arrival(stay.day(), other.site(), other.departure(), stay.site()) <= stay.arrival()
                    : problem.arrival(stay.day(), stay.site(), stay.departure(), other.site()) <= other.arrival();
            if (!fits) {
                leaving.add(other);
            } else if (other.departure() <= stay.arrival()) {
                place = other.site();
                free = other.departure();
            }
        }
        if (problem.arrival(stay.day(), place, free, stay.site()) > stay.arrival()) {
            return Optional.empty();
        }
        for (int square : problem.squaresOfSite().get(stay.site())) {
            roster.holdsOf(square).stream().filter(hold -> hold.overlaps(stay.arrival(), stay.departure())).forEach(leaving::add);
        }
        Chance turn = stay.turns().get(0);
        if (roster.birdIsTaken(turn)) {
            roster.stays().stream().filter(other -> other.turns().stream().anyMatch(t -> t.bird() == turn.bird() && t.overlaps(turn)))
                    .forEach(leaving::add);
        }
        if (leaving.stream().anyMatch(other -> other.fixed().isPresent() && other.turns().isEmpty()
                || other.fixed().isPresent() && other.overlaps(stay.arrival(), stay.departure()))) {
            return Optional.empty();
        }
        return Optional.of(new Attempt(stay, List.copyOf(leaving), leaving.stream().mapToDouble(roster::gain).sum()));
    }

    private Optional<Way> way(Roster roster, Attempt attempt, double worth) {
        Set<Integer> days = new LinkedHashSet<>(List.of(attempt.stay.day()));
        for (Stay stay : attempt.leaving) {
            roster.clear(stay);
            if (stay.day() != FixedStay.NO_DAY) {
                days.add(stay.day());
            }
        }
        if (roster.birdIsTaken(attempt.stay.turns().get(0))) {
            return Optional.empty();
        }
        roster.add(attempt.stay);
        days.forEach(day -> dayFill.fill(roster, day, plain));
        return days.stream().allMatch(roster::canBeDriven)
                ? Optional.of(new Way(attempt.stay.day(), attempt.stay.turns().get(0), worth - roster.worth(), routes(roster)))
                : Optional.empty();
    }
}
