package org.straddle.plan.event;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RoadTable;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.search.Exchange;

/** Whether a turn could be driven to, worked and driven back from in time, if a day had nothing but its fixed stops. */
final class InReach {

    private final PlanProblem problem;
    private final Roster fixedOnly;
    private final Exchange exchange;

    InReach(PlanProblem problem, Exchange exchange) {
        this.problem = problem;
        this.exchange = exchange;
        fixedOnly = new Roster(problem);
    }

    boolean byAnybody(Chance chance) {
        for (int day = 0; day < problem.days().size(); day++) {
            if (on(day, chance)) {
                return true;
            }
        }
        return false;
    }

    boolean on(int day, Chance chance) {
        return exchange.allows(day, chance) && Gap.between(problem, day, fixedOnly.day(day)).stream()
                .anyMatch(gap -> fits(gap, chance));
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
