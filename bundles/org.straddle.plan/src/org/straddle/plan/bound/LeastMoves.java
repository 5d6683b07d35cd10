package org.straddle.plan.bound;

import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.StationTimes;

/**
 * Times between departure and arrival that no plan can go below: {@link PlanProblem#arrival} sees to the turn gap
 * on the careful side, a bound must err on the other.
 */
final class LeastMoves {

    /** A stay begins and ends on a whole minute, so each end may lose nearly one. */
    private static final int ROUNDING = 2 * (StationTimes.STEP - 1);

    private final PlanProblem problem;
    private final int leastGap;

    LeastMoves(PlanProblem problem) {
        this.problem = problem;
        StationTimes times = problem.times();
        leastGap = Math.max(0, times.turnGap() - times.setUp() - times.takeDown() - ROUNDING);
    }

    /** The earliest time at which a team can be at a place that leaves another no earlier than this. */
    int arrival(int day, int from, int departure, int to) {
        return Math.max(problem.days().get(day).arrival(departure, problem.roads().totalSeconds(from, to)),
                departure + leastGap);
    }
}
