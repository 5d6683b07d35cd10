package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Fills one gap of one team in the best way, all else staying as it is: a dynamic programme over chances in
 * time order. A state is the last chance worked and how many were worked in this stop; it is reached from an
 * earlier chance of the same stop, or from the best departure of another site that the road allows.
 *
 * <p>Why not simply append the best next stop: a stop pays through the passes that follow and through the
 * time it leaves for others, which only looking at the whole gap tells.
 *
 * <p>A state keeps one way to reach it, the best so far, and its value is the truth for that way: squares
 * worked in earlier stops of the same way count as worked. It is not always the best way of all, because
 * what was worked and driven before bears on what comes after; keeping all ways would. And of all other sites
 * only the {@value #NEIGHBOURS} nearest are tried as the one before. Both keep a gap of ten thousand chances
 * in the milliseconds; the search around this tries many gaps.
 *
 * <p>One object serves one problem, one gap after the other; its tables are reused.
 */
final class Refill {

    private static final int NEIGHBOURS = 40;
    private static final int NONE = -1;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final GapSites at;
    private final int tiers;
    private final int[][] nearest;
    private final boolean[][] shareSquares;

    // By state: chance × tiers + (passes worked in this stop − 1).
    private final double[] value;
    private final int[] before;
    private final int[] stopBefore;
    private final int[] driven;

    // By chance, valid in the present gap only, and only where its number stands.
    private final int[] reachedInGap;
    private final int[] interval;

    // By rank: what is best among this chance and those of its site that end earlier.
    private final int[] leaveBest;
    private final int[] stayBest;
    private final int[] stayInterval;

    // By site: ranks at which the gap begins and up to which the tables by rank are filled.
    private final int[] gapRank;
    private final int[] filledRank;

    // The present gap.
    private Gap gap;
    private Taste taste;
    private double pricePerSecond;
    private int drivingLeft;
    private int gapNumber;

    Refill(PlanProblem problem, ChanceTable table) {
        this.problem = problem;
        this.table = table;
        tiers = problem.tiers().count();
        int chances = table.size();
        int sites = problem.siteCount();
        value = new double[chances * tiers];
        before = new int[chances * tiers];
        stopBefore = new int[chances * tiers];
        driven = new int[chances * tiers];
        reachedInGap = new int[chances];
        interval = new int[chances];
        leaveBest = new int[chances];
        stayBest = new int[chances * tiers];
        stayInterval = new int[chances];
        gapRank = new int[sites];
        filledRank = new int[sites];
        at = new GapSites(problem, table);
        nearest = new int[sites][];
        shareSquares = new boolean[sites][sites];
        for (int site = 0; site < sites; site++) {
            nearest[site] = nearestSites(site);
            for (int other = 0; other < sites; other++) {
                shareSquares[site][other] = !Collections.disjoint(problem.squaresOfSite().get(site),
                        problem.squaresOfSite().get(other));
            }
        }
    }

    /** The site itself comes first: a team may leave it to another and return. */
    private int[] nearestSites(int site) {
        List<Integer> others = new ArrayList<>();
        for (int other = 0; other < problem.siteCount(); other++) {
            if (table.firstRank(other) < table.firstRank(other + 1)) {
                others.add(other);
            }
        }
        others.sort(Comparator.comparingInt(other -> problem.roads().totalSeconds(other, site)));
        return others.stream().limit(NEIGHBOURS + 1).mapToInt(Integer::intValue).toArray();
    }

    /**
     * The stays to put into the gap, in order; none when driving on is best.
     *
     * @param roster everything else; not changed
     */
    List<Stay> fill(Roster roster, Gap gap, Taste taste) {
        this.gap = gap;
        this.taste = taste;
        pricePerSecond = taste.pricePerHour() / 3600;
        drivingLeft = drivingLeft(roster);
        gapNumber++;
        at.lookFrom(gap, roster, taste);
        for (int site = 0; site < gapRank.length; site++) {
            gapRank[site] = table.rankEndedBy(site, gap.freeAt());
            filledRank[site] = gapRank[site];
        }
        double bestValue = -price(gap.fromPlace(), gap.toPlace());
        int bestState = NONE;
        for (int c = table.firstFrom(gap.freeAt()); c < table.size() && table.chance(c).start() < gap.dueAt(); c++) {
            if (reach(c)) {
                int leave = bestStateOf(c);
                double whole = value[leave] - price(siteOf(leave), gap.toPlace());
                if (whole > bestValue) {
                    bestValue = whole;
                    bestState = leave;
                }
            }
        }
        return staysUpTo(bestState, gap.day());
    }

    /** Sets the states of a chance, if it can be worked at all. */
    private boolean reach(int c) {
        if (!at.isOpen(table.chance(c).site()) || !at.canBeWorked(c)) {
            return false;
        }
        interval[c] = at.freeInterval(c);
        if (interval[c] == GapSites.NONE) {
            return false;
        }
        reachedInGap[c] = gapNumber;
        arriveFor(c);
        stayOnFor(c);
        return true;
    }

    /** Driving that the limit of the day leaves for this gap, seconds. */
    private int drivingLeft(Roster roster) {
        int others = roster.drivingSeconds(gap.day())
                - problem.roads().drivingSeconds(gap.fromPlace(), gap.toPlace());
        return problem.days().get(gap.day()).drivingLimit() - others;
    }

    private double price(int fromPlace, int toPlace) {
        return pricePerSecond * problem.roads().drivingSeconds(fromPlace, toPlace);
    }

    /** What the next pass pays on a way whose stops before this one end in a state. */
    private double payAfter(int lastStop, int site, int workedInStop) {
        boolean fresh = true;
        for (int stop = lastStop; stop != NONE && fresh; stop = stopBefore[stop]) {
            fresh = !shareSquares[site][siteOf(stop)];
        }
        if (fresh) {
            return at.pay(site, workedInStop);
        }
        double sum = 0;
        for (int square : problem.squaresOfSite().get(site)) {
            sum += at.pay(site, square, workedInStop + workedOnTheWay(lastStop, square));
        }
        return sum;
    }

    private int workedOnTheWay(int lastStop, int square) {
        int worked = 0;
        for (int stop = lastStop; stop != NONE; stop = stopBefore[stop]) {
            if (problem.squaresOfSite().get(siteOf(stop)).contains(square)) {
                worked += stop % tiers + 1;
            }
        }
        return worked;
    }

    private int siteOf(int state) {
        return table.chance(state / tiers).site();
    }

    /** The chance is the first of a stop: from where did the team come? */
    private void arriveFor(int c) {
        int site = table.chance(c).site();
        int first = c * tiers;
        double whim = taste.whim()[c];
        double committed = at.committed(c);
        int back = problem.roads().drivingSeconds(site, gap.toPlace());
        value[first] = Double.NEGATIVE_INFINITY;
        int direct = problem.roads().drivingSeconds(gap.fromPlace(), site);
        if (direct + back <= drivingLeft) {
            enter(first, NONE, direct, whim * at.pay(site, 0) + committed - pricePerSecond * direct);
        }
        for (int other : nearest[site]) {
            if (!at.isOpen(other)) {
                continue;
            }
            int ranks = table.rankDepartedBy(other, problem.departure(gap.day(), other, site, table.arrive(c)));
            if (ranks <= gapRank[other]) {
                continue;
            }
            fillUpTo(other, ranks);
            int left = leaveBest[ranks - 1];
            if (left == NONE) {
                continue;
            }
            int leg = problem.roads().drivingSeconds(other, site);
            double reached = value[left] - pricePerSecond * leg;
            if (reached + whim * at.pay(site, 0) + committed > value[first] && driven[left] + leg + back <= drivingLeft) {
                enter(first, left, driven[left] + leg, reached + whim * payAfter(left, site, 0) + committed);
            }
        }
        before[first] = stopBefore[first];
    }

    private void enter(int first, int lastStop, int drivenUntil, double reached) {
        if (reached > value[first]) {
            value[first] = reached;
            stopBefore[first] = lastStop;
            driven[first] = drivenUntil;
        }
    }

    /** The chance is the second, third, … of a stop. */
    private void stayOnFor(int c) {
        int site = table.chance(c).site();
        int ranks = table.rankEndedBy(site, table.chance(c).start() - problem.times().turnGap());
        boolean reachable = ranks > gapRank[site];
        if (reachable) {
            fillUpTo(site, ranks);
            reachable = stayInterval[ranks - 1] == interval[c];
        }
        for (int k = 1; k < tiers; k++) {
            int state = c * tiers + k;
            int previous = reachable ? stayBest[(ranks - 1) * tiers + k - 1] : NONE;
            value[state] = Double.NEGATIVE_INFINITY;
            double more = previous == NONE ? 0
                    : taste.whim()[c] * payAfter(stopBefore[previous], site, k) + at.committed(c);
            if (more > 0) {
                value[state] = value[previous] + more;
                before[state] = previous;
                stopBefore[state] = stopBefore[previous];
                driven[state] = driven[previous];
            }
        }
    }

    /** Among equals the longest stop, for fewer moves, or the shortest where the taste is so. */
    private int bestStateOf(int c) {
        int best = c * tiers;
        for (int k = 1; k < tiers; k++) {
            double gain = value[c * tiers + k] - value[best];
            if (gain > 0 || gain == 0 && !taste.splitting()) {
                best = c * tiers + k;
            }
        }
        return best;
    }

    /** All chances up to there end before the present one starts, so their values are final. */
    private void fillUpTo(int site, int ranks) {
        for (int r = filledRank[site]; r < ranks; r++) {
            int c = table.atRank(r);
            boolean first = r == gapRank[site];
            leaveBest[r] = first ? NONE : leaveBest[r - 1];
            stayInterval[r] = first ? NONE : stayInterval[r - 1];
            for (int k = 0; k < tiers; k++) {
                stayBest[r * tiers + k] = first ? NONE : stayBest[(r - 1) * tiers + k];
            }
            if (reachedInGap[c] == gapNumber) {
                fillWith(r, c);
            }
        }
        filledRank[site] = Math.max(filledRank[site], ranks);
    }

    private void fillWith(int r, int c) {
        int leave = bestStateOf(c);
        boolean left = value[leave] > Double.NEGATIVE_INFINITY;
        if (left && (leaveBest[r] == NONE || value[leave] > value[leaveBest[r]])) {
            leaveBest[r] = leave;
        }
        boolean sameInterval = stayInterval[r] == interval[c];
        stayInterval[r] = interval[c];
        for (int k = 0; k < tiers; k++) {
            int state = c * tiers + k;
            int known = sameInterval ? stayBest[r * tiers + k] : NONE;
            boolean reached = value[state] > Double.NEGATIVE_INFINITY;
            stayBest[r * tiers + k] = reached && (known == NONE || value[state] > value[known]) ? state : known;
        }
    }

    private List<Stay> staysUpTo(int state, int day) {
        List<Stay> stays = new ArrayList<>();
        List<Chance> turns = new ArrayList<>();
        for (int s = state; s != NONE; s = before[s]) {
            turns.add(table.chance(s / tiers));
            if (s % tiers == 0) {
                Collections.reverse(turns);
                stays.add(Stay.around(day, turns, problem.times()));
                turns.clear();
            }
        }
        Collections.reverse(stays);
        return stays;
    }
}
