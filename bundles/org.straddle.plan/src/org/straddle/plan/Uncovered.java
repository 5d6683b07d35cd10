package org.straddle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.straddle.plan.UncoveredSquare.Reason;

/**
 * Why squares that somebody needs are not in a plan. It asks one simple question after the other and tells
 * the first that is answered with no; a square that passes them all is contested.
 */
final class Uncovered {

    private final EventProblem event;
    private final PlanProblem problem;
    private final Roster fixedOnly;

    private Uncovered(EventProblem event) {
        this.event = event;
        problem = event.problem();
        fixedOnly = new Roster(problem);
    }

    /** Most needed first. */
    static List<UncoveredSquare> of(EventProblem event, Roster plan) {
        Uncovered uncovered = new Uncovered(event);
        List<UncoveredSquare> found = new ArrayList<>();
        for (int square = 0; square < event.problem().squareCount(); square++) {
            double demand = event.problem().demand().get(square);
            if (demand > 0 && plan.worked(square) == 0) {
                found.add(new UncoveredSquare(event.square(square), demand, uncovered.reason(square)));
            }
        }
        found.sort(Comparator.comparingDouble(UncoveredSquare::demand).reversed()
                .thenComparing(UncoveredSquare::square));
        return found;
    }

    private Reason reason(int square) {
        if (event.usableSites(square).isEmpty()) {
            return Reason.NO_SITE;
        }
        List<Chance> chances = problem.chances().stream()
                .filter(chance -> problem.squaresOfSite().get(chance.site()).contains(square)).toList();
        if (chances.isEmpty()) {
            return Reason.NO_PASS;
        }
        return chances.stream().anyMatch(this::isInReach) ? Reason.CONTESTED : Reason.NO_TIME;
    }

    private boolean isInReach(Chance chance) {
        for (int day = 0; day < problem.days().size(); day++) {
            for (Gap gap : Gap.between(problem, day, fixedOnly.day(day))) {
                if (fits(gap, chance)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean fits(Gap gap, Chance chance) {
        int site = chance.site();
        RoadTable roads = problem.roads();
        int driving = fixedOnly.drivingSeconds(gap.day()) - roads.drivingSeconds(gap.fromPlace(), gap.toPlace())
                + roads.drivingSeconds(gap.fromPlace(), site) + roads.drivingSeconds(site, gap.toPlace());
        return problem.arrival(gap.day(), gap.fromPlace(), gap.freeAt(), site) <= problem.times().arrivalFor(chance.start())
                && problem.arrival(gap.day(), site, problem.times().departureAfter(chance.end()), gap.toPlace()) <= gap.dueAt()
                && driving <= problem.days().get(gap.day()).drivingLimit();
    }
}
