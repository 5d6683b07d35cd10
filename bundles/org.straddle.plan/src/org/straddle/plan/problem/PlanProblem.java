package org.straddle.plan.problem;

import java.util.List;
import java.util.Optional;

import org.straddle.plan.Proposal;

/**
 * Everything a planner may know, as numbers: no model, no sky, no clock. Any way of planning starts from
 * this and ends in a list of {@link Stay}s; tests write it down directly.
 *
 * <p>Things are indices into lists: sites, squares, birds, days. Times are whole seconds from an origin on a
 * whole minute.
 *
 * @param squaresOfSite      by site: the squares a station there works from
 * @param wants              by square: how many chasers still need it
 * @param teamsAtOnce        by bird: how many teams may work it at the same time
 * @param days               the teams' days; those of one team do not overlap
 * @param chances            passes that can be worked; none at a site that may not be used
 * @param fixed              stops that stay as they are
 * @param roads              drives between sites and bases
 * @param times              set-up, take-down and turn gap
 * @param drivingPricePerHour worth that an hour of driving costs
 * @param banned             times at which days may not use sites or birds
 * @param commitments        turns of an earlier plan that are worth keeping
 * @param windows            work that may begin at any time of a window; a problem has chances or windows, not
 *                           both, and one window a site at most
 * @param relief             how long a team may be at one site
 */
public record PlanProblem(List<List<Integer>> squaresOfSite, Wants wants, List<Integer> teamsAtOnce,
        List<PlanDay> days, List<Chance> chances, List<FixedStay> fixed, RoadTable roads, StationTimes times,
        double drivingPricePerHour, BannedTimes banned, Commitments commitments, List<Window> windows, Relief relief) {

    public PlanProblem {
        squaresOfSite = squaresOfSite.stream().map(List::copyOf).toList();
        teamsAtOnce = List.copyOf(teamsAtOnce);
        days = List.copyOf(days);
        chances = List.copyOf(chances);
        fixed = List.copyOf(fixed);
        windows = List.copyOf(windows);
        if (!windows.isEmpty() && !(chances.isEmpty() && banned.isEmpty() && commitments.isEmpty() && fixed.isEmpty())) {
            throw new IllegalArgumentException("windows stand by themselves: no chances, bans, commitments, fixed stays");
        }
        if (!windows.isEmpty() && relief.isNeeded()) {
            throw new IllegalArgumentException("work in windows asks for no relief");
        }
        if (windows.stream().mapToInt(Window::site).distinct().count() < windows.size()) {
            throw new IllegalArgumentException("a site has one window at most");
        }
        long teams = days.stream().mapToInt(PlanDay::team).distinct().count();
        for (Window window : windows) {
            if (teamsAtOnce.get(window.bird()) < teams) {
                throw new IllegalArgumentException("a bird with windows must serve all teams at once: " + window.bird());
            }
        }
    }

    /** Without windows: what every event is. */
    public PlanProblem(List<List<Integer>> squaresOfSite, Wants wants, List<Integer> teamsAtOnce,
            List<PlanDay> days, List<Chance> chances, List<FixedStay> fixed, RoadTable roads, StationTimes times,
            double drivingPricePerHour, BannedTimes banned, Commitments commitments) {
        this(squaresOfSite, wants, teamsAtOnce, days, chances, fixed, roads, times, drivingPricePerHour, banned, commitments,
                List.of());
    }

    /** With teams that may stay as long as they like. */
    public PlanProblem(List<List<Integer>> squaresOfSite, Wants wants, List<Integer> teamsAtOnce,
            List<PlanDay> days, List<Chance> chances, List<FixedStay> fixed, RoadTable roads, StationTimes times,
            double drivingPricePerHour, BannedTimes banned, Commitments commitments, List<Window> windows) {
        this(squaresOfSite, wants, teamsAtOnce, days, chances, fixed, roads, times, drivingPricePerHour, banned, commitments,
                windows, Relief.NOT_NEEDED);
    }

    /** The same where teams need relief. */
    public PlanProblem with(Relief needed) {
        return new PlanProblem(squaresOfSite, wants, teamsAtOnce, days, chances, fixed, roads, times, drivingPricePerHour,
                banned, commitments, windows, needed);
    }

    /** Whether a team may be at a site from one second to another: not too long, or as long as it was told to others. */
    public boolean needsNoRelief(int day, int site, int from, int until) {
        return until - (long) from <= relief.longest() || commitments.tells(day, site, from, until, times, relief);
    }

    /** Without bans and commitments. */
    public PlanProblem(List<List<Integer>> squaresOfSite, Wants wants, List<Integer> teamsAtOnce,
            List<PlanDay> days, List<Chance> chances, List<FixedStay> fixed, RoadTable roads, StationTimes times,
            double drivingPricePerHour) {
        this(squaresOfSite, wants, teamsAtOnce, days, chances, fixed, roads, times, drivingPricePerHour,
                BannedTimes.NONE, Commitments.NONE);
    }

    /** Why there is nothing to search; empty when there is something. */
    public Optional<Proposal.Ending> leavesNothingToPlan() {
        boolean wanted = !commitments.isEmpty() || wants.isAnything();
        return Optional.ofNullable(days.isEmpty() ? Proposal.Ending.NOBODY_OUT
                : chances.isEmpty() && windows.isEmpty() ? Proposal.Ending.NOTHING_TO_WORK
                : !wanted ? Proposal.Ending.NOTHING_WANTED : null);
    }

    public int siteCount() {
        return squaresOfSite.size();
    }

    /** How many groups of chasers there are. */
    public int groupCount() {
        return wants.groups();
    }

    public int squareCount() {
        return wants.squares();
    }

    /** When a team is at a place that leaves another no earlier than this; see {@link #gapSeconds()}. */
    public int arrival(int day, int from, int departure, int to) {
        return Math.max(days.get(day).arrival(departure, roads.totalSeconds(from, to)), departure + gapSeconds());
    }

    /** Least time from leaving a place to being at another, on a day without pauses. */
    public int leastSeconds(int from, int to) {
        return Math.max(roads.totalSeconds(from, to), gapSeconds());
    }

    /** When a team has to leave a place to be at another no later than this. */
    public int departure(int day, int from, int to, int arrival) {
        return Math.min(days.get(day).departure(arrival, roads.totalSeconds(from, to)), arrival - gapSeconds());
    }

    /** Least time between two stays: above zero where the turn gap does not fit between take-down and set-up. */
    private int gapSeconds() {
        return times.turnGap() - Math.min(times.setUp(), times.takeDown());
    }
}
