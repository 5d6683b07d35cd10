package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Plans as people do by hand: each team in turn goes to the site that is worth most now, the nearest of those that
 * are worth nearly as much, works passes there as they come while they pay, and looks for the next.
 */
final class NextStop {

    private static final double NEARLY = 0.9;

    /** Then it moves on. */
    private static final int PASSES = 4;

    private final PlanProblem problem;
    private final Roster roster;

    private NextStop(PlanProblem problem) {
        this.problem = problem;
        roster = new Roster(problem);
    }

    static Roster plan(PlanProblem problem) {
        NextStop plan = new NextStop(problem);
        for (int day = 0; day < problem.days().size(); day++) {
            while (plan.addStop(day)) {
                // as long as one fits
            }
        }
        return plan.roster;
    }

    private boolean addStop(int day) {
        List<Gap> gaps = Gap.between(problem, day, roster.day(day));
        Gap rest = gaps.get(gaps.size() - 1);
        List<Stay> possible = new ArrayList<>();
        for (int site = 0; site < problem.siteCount(); site++) {
            List<Chance> turns = turns(rest, site);
            if (!turns.isEmpty()) {
                possible.add(Stay.around(day, turns, problem.times()));
            }
        }
        double best = possible.stream().mapToDouble(stay -> owed(stay.site())).max().orElse(0);
        return possible.stream().filter(stay -> owed(stay.site()) >= NEARLY * best)
                .min(Comparator.comparingInt(stay -> problem.roads().totalSeconds(rest.fromPlace(), stay.site())))
                .filter(this::added).isPresent();
    }

    private boolean added(Stay stay) {
        roster.add(stay);
        if (roster.canBeDriven(stay.day())) {
            return true;
        }
        roster.remove(stay);
        return false;
    }

    private List<Chance> turns(Gap rest, int site) {
        int arrival = problem.arrival(rest.day(), rest.fromPlace(), rest.freeAt(), site);
        int departure = problem.departure(rest.day(), site, rest.toPlace(), rest.dueAt());
        List<Chance> turns = new ArrayList<>();
        int free = Integer.MIN_VALUE / 2;
        for (Chance chance : problem.chances().stream().filter(c -> c.site() == site)
                .sorted(Comparator.comparingInt(Chance::end)).toList()) {
            List<Chance> more = new ArrayList<>(turns);
            more.add(chance);
            Stay stay = Stay.around(rest.day(), more, problem.times());
            if (chance.start() >= free + problem.times().turnGap() && stay.arrival() >= arrival
                    && stay.departure() <= departure && turns.size() < PASSES && owed(site) > 0 && !roster.birdIsTaken(chance)
                    && problem.squaresOfSite().get(site).stream().flatMap(square -> roster.holdsOf(square).stream())
                            .noneMatch(hold -> hold.overlaps(stay.arrival(), stay.departure()))) {
                turns.add(chance);
                free = chance.end();
            }
        }
        return turns;
    }

    private double owed(int site) {
        double sum = 0;
        for (int square : problem.squaresOfSite().get(site)) {
            for (int group = 0; group < problem.groupCount(); group++) {
                sum += roster.owed(square, group);
            }
        }
        return sum;
    }
}
