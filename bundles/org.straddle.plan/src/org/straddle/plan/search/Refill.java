package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Service;
import org.straddle.plan.problem.Stay;

/**
 * Fills one gap of one team in the best way, all else staying as it is: a dynamic programme over chances in
 * time order. A state is the last chance worked; it is reached from an
 * earlier chance of the same stop, or from the best departure of another site that the road allows.
 *
 * <p>Why not simply append the best next stop: a stop pays through the passes that follow and through the
 * time it leaves for others, which only looking at the whole gap tells.
 *
 * <p>A state keeps one way to reach it, the best so far, and its value is the truth for that way: who was served in
 * earlier turns and stops of the same way is served. It is not always the best way of all, because
 * what was worked and driven before bears on what comes after; keeping all ways would. Of the chances before it at the
 * same site only the last {@value #BACK} and the best one before those are tried, and of all other sites
 * only the {@value #NEIGHBOURS} nearest as the one before. That keeps a gap of ten thousand chances
 * in the milliseconds; the search around this tries many gaps.
 *
 * <p>One object serves one problem, one gap after the other; its tables are reused.
 */
final class Refill {

    private static final int NEIGHBOURS = 40;
    private static final int BACK = 12;
    /** Values closer than this are the same. */
    private static final double EQUAL = 1e-9;
    private static final int NONE = -1;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final GapSites at;
    private final int groups;
    private final int[][] nearest;
    private final boolean[][] shareSquares;
    private final double[] fresh;

    // By chance: the best way to it.
    private final double[] value;
    private final int[] before;
    private final int[] stopBefore;
    private final int[] driven;
    // By chance and group: the part that this stop has not served, with this chance.
    private final double[] unserved;

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
        groups = problem.groupCount();
        int chances = table.size();
        int sites = problem.siteCount();
        value = new double[chances];
        before = new int[chances];
        stopBefore = new int[chances];
        driven = new int[chances];
        unserved = new double[chances * groups];
        fresh = new double[groups];
        Arrays.fill(fresh, 1);
        reachedInGap = new int[chances];
        interval = new int[chances];
        leaveBest = new int[chances];
        stayBest = new int[chances];
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
                double whole = value[c] - price(table.chance(c).site(), gap.toPlace());
                if (whole > bestValue) {
                    bestValue = whole;
                    bestState = c;
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
        value[c] = Double.NEGATIVE_INFINITY;
        arriveFor(c);
        stayOnFor(c);
        if (value[c] == Double.NEGATIVE_INFINITY) {
            return false;
        }
        reachedInGap[c] = gapNumber;
        int previous = before[c] == stopBefore[c] ? NONE : before[c];
        for (int g = 0; g < groups; g++) {
            unserved[c * groups + g] = (previous == NONE ? 1 : unserved[previous * groups + g])
                    * (1 - table.chance(c).service().probability(g));
        }
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

    /**
     * What a chance pays on a way whose stops before this one end in a chance.
     *
     * @param left by group from an index on: the part that this stop has not served so far
     */
    private double pay(int c, int lastStop, double[] left, int from) {
        int site = table.chance(c).site();
        boolean alone = true;
        for (int stop = lastStop; stop != NONE && alone; stop = stopBefore[stop]) {
            alone = !shareSquares[site][table.chance(stop).site()];
        }
        double[] owed = at.owed(site);
        Service service = table.chance(c).service();
        double sum = 0;
        for (int g = 0; g < groups; g++) {
            double p = service.probability(g);
            if (p > 0) {
                sum += p * left[from + g] * (alone ? owed[g] : owedAfter(lastStop, site, g));
            }
        }
        return taste.whim()[c] * sum + at.committed(c);
    }

    /** How many of a group are owed squares of a site after the stops of a way. */
    private double owedAfter(int lastStop, int site, int group) {
        double sum = 0;
        for (int square : problem.squaresOfSite().get(site)) {
            double ofSquare = at.owed(site, square, group);
            for (int stop = lastStop; stop != NONE; stop = stopBefore[stop]) {
                if (problem.squaresOfSite().get(table.chance(stop).site()).contains(square)) {
                    ofSquare *= unserved[stop * groups + group];
                }
            }
            sum += ofSquare;
        }
        return sum;
    }

    /** The chance is the first of a stop: from where did the team come? */
    private void arriveFor(int c) {
        int site = table.chance(c).site();
        int back = problem.roads().drivingSeconds(site, gap.toPlace());
        int direct = problem.roads().drivingSeconds(gap.fromPlace(), site);
        double atMost = pay(c, NONE, fresh, 0);
        if (direct + back <= drivingLeft) {
            enter(c, NONE, direct, atMost - pricePerSecond * direct);
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
            int drive = problem.roads().drivingSeconds(other, site);
            double reached = value[left] - pricePerSecond * drive;
            if (reached + atMost > value[c] && driven[left] + drive + back <= drivingLeft) {
                enter(c, left, driven[left] + drive, reached + pay(c, left, fresh, 0));
            }
        }
    }

    private void enter(int c, int lastStop, int drivenUntil, double reached) {
        if (reached > value[c]) {
            value[c] = reached;
            before[c] = lastStop;
            stopBefore[c] = lastStop;
            driven[c] = drivenUntil;
        }
    }

    /** The chance is the second, third, … of a stop. */
    private void stayOnFor(int c) {
        int site = table.chance(c).site();
        int ranks = table.rankEndedBy(site, table.chance(c).start() - problem.times().turnGap());
        if (ranks <= gapRank[site]) {
            return;
        }
        fillUpTo(site, ranks);
        if (stayInterval[ranks - 1] != interval[c]) {
            return;
        }
        int first = Math.max(gapRank[site], ranks - BACK);
        for (int rank = first; rank < ranks; rank++) {
            int previous = table.atRank(rank);
            if (reachedInGap[previous] == gapNumber && interval[previous] == interval[c]) {
                stayOn(c, previous);
            }
        }
        if (first > gapRank[site] && stayInterval[first - 1] == interval[c] && stayBest[first - 1] != NONE) {
            stayOn(c, stayBest[first - 1]);
        }
    }

    /** Among equals the team stays, for fewer moves, or moves where the taste is so. */
    private void stayOn(int c, int previous) {
        double more = pay(c, stopBefore[previous], unserved, previous * groups);
        double lead = value[previous] + more - value[c];
        if (more > 0 && (lead > EQUAL || lead > -EQUAL && !taste.splitting())) {
            value[c] = value[previous] + more;
            before[c] = previous;
            stopBefore[c] = stopBefore[previous];
            driven[c] = driven[previous];
        }
    }

    /** All chances up to there end before the present one starts, so their values are final. */
    private void fillUpTo(int site, int ranks) {
        for (int r = filledRank[site]; r < ranks; r++) {
            int c = table.atRank(r);
            boolean first = r == gapRank[site];
            leaveBest[r] = first ? NONE : leaveBest[r - 1];
            stayInterval[r] = first ? NONE : stayInterval[r - 1];
            stayBest[r] = first ? NONE : stayBest[r - 1];
            if (reachedInGap[c] == gapNumber) {
                fillWith(r, c);
            }
        }
        filledRank[site] = Math.max(filledRank[site], ranks);
    }

    private void fillWith(int r, int c) {
        if (leaveBest[r] == NONE || value[c] > value[leaveBest[r]]) {
            leaveBest[r] = c;
        }
        int known = stayInterval[r] == interval[c] ? stayBest[r] : NONE;
        stayInterval[r] = interval[c];
        stayBest[r] = known == NONE || value[c] > value[known] ? c : known;
    }

    private List<Stay> staysUpTo(int state, int day) {
        List<Stay> stays = new ArrayList<>();
        List<Chance> turns = new ArrayList<>();
        for (int c = state; c != NONE; c = before[c]) {
            turns.add(table.chance(c));
            if (before[c] == stopBefore[c]) {
                Collections.reverse(turns);
                stays.add(Stay.around(day, turns, problem.times()));
                turns.clear();
            }
        }
        Collections.reverse(stays);
        return stays;
    }
}
