package org.straddle.plan;

import java.util.List;

/**
 * Everything a planner may know, as numbers: no model, no sky, no clock. Any way of planning starts from
 * this and ends in a list of {@link Stay}s; tests write it down directly.
 *
 * <p>Things are indices into lists: sites, squares, birds, days. Times are whole seconds from an origin on a
 * whole minute.
 *
 * @param squaresOfSite      by site: the squares a station there works from
 * @param demand             by square: share of chasers that still need it, 0 to 1
 * @param tiers              worth of repeated passes from one square
 * @param teamsAtOnce        by bird: how many teams may work it at the same time
 * @param days               the teams' days; those of one team do not overlap
 * @param chances            passes that can be worked; none at a site that may not be used
 * @param fixed              stops that stay as they are
 * @param roads              legs between sites and bases
 * @param times              set-up, take-down and turn gap
 * @param drivingPricePerHour worth that an hour of driving costs
 */
record PlanProblem(List<List<Integer>> squaresOfSite, List<Double> demand, Tiers tiers, List<Integer> teamsAtOnce,
        List<PlanDay> days, List<Chance> chances, List<FixedStay> fixed, RoadTable roads, StationTimes times,
        double drivingPricePerHour) {

    PlanProblem {
        squaresOfSite = squaresOfSite.stream().map(List::copyOf).toList();
        demand = List.copyOf(demand);
        teamsAtOnce = List.copyOf(teamsAtOnce);
        days = List.copyOf(days);
        chances = List.copyOf(chances);
        fixed = List.copyOf(fixed);
    }

    /** Whether nobody is out, nothing can be worked, or nothing is worth anything. */
    boolean leavesNothingToPlan() {
        return days.isEmpty() || chances.isEmpty() || tiers.count() == 0;
    }

    int siteCount() {
        return squaresOfSite.size();
    }

    int squareCount() {
        return demand.size();
    }

    /**
     * Least time from departure at one place to arrival at the next: the leg, or more where the turn gap
     * would not fit between take-down and set-up otherwise.
     */
    int moveSeconds(int from, int to) {
        int gap = times.turnGap() - Math.min(times.setUp(), times.takeDown());
        return Math.max(roads.totalSeconds(from, to), gap);
    }
}
