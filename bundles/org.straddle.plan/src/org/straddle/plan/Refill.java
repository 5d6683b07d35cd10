package org.straddle.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Fills one gap of one team in the best way, all else staying as it is: a dynamic programme over chances in
 * time order. A state is the last chance worked and how many were worked in this stop; it is reached from an
 * earlier chance of the same stop, or from the best departure of another site that the road allows.
 *
 * <p>Why not simply append the best next stop: a stop pays through the passes that follow and through the
 * time it leaves for others, which only looking at the whole gap tells.
 *
 * <p>Exact, but for two things. The worth of repeated passes from one square is counted within a stop and
 * against the rest of the plan, not between two stops in this gap; whoever uses the result reckons its true
 * worth. And of all other sites only the {@value #NEIGHBOURS} nearest are tried as the one before, which
 * keeps a gap of ten thousand chances in the milliseconds.
 *
 * <p>One object serves one problem, one gap after the other; its tables are reused.
 */
final class Refill {

    private static final int NEIGHBOURS = 40;
    private static final int NONE = -1;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final int tiers;
    private final int[][] nearest;

    // By state: chance × tiers + (passes worked in this stop − 1).
    private final double[] value;
    private final int[] before;

    // By chance, valid in the present gap only, and only where its number stands.
    private final int[] reachedInGap;
    private final int[] interval;

    // By rank: what is best among this chance and those of its site that end earlier.
    private final int[] leaveBest;
    private final int[] stayBest;
    private final int[] stayInterval;

    // By site, valid in the present gap only.
    private final boolean[] open;
    private final int[] earliest;
    private final int[] latest;
    private final int[] gapRank;
    private final int[] filledRank;
    private final double[][] pay;

    private int gapNumber;
    private double pricePerSecond;

    Refill(PlanProblem problem, ChanceTable table) {
        this.problem = problem;
        this.table = table;
        tiers = problem.tiers().count();
        int chances = table.size();
        int sites = problem.siteCount();
        value = new double[chances * tiers];
        before = new int[chances * tiers];
        reachedInGap = new int[chances];
        interval = new int[chances];
        leaveBest = new int[chances];
        stayBest = new int[chances * tiers];
        stayInterval = new int[chances];
        open = new boolean[sites];
        earliest = new int[sites];
        latest = new int[sites];
        gapRank = new int[sites];
        filledRank = new int[sites];
        pay = new double[sites][tiers];
        nearest = new int[sites][];
        for (int site = 0; site < sites; site++) {
            nearest[site] = nearestSites(site);
        }
    }

    private int[] nearestSites(int site) {
        List<Integer> others = new ArrayList<>();
        for (int other = 0; other < problem.siteCount(); other++) {
            if (other != site && table.firstRank(other) < table.firstRank(other + 1)) {
                others.add(other);
            }
        }
        others.sort(Comparator.comparingInt(other -> problem.roads().totalSeconds(other, site)));
        return others.stream().limit(NEIGHBOURS).mapToInt(Integer::intValue).toArray();
    }

    /**
     * The stays to put into the gap, in order; none when driving on is best.
     *
     * @param roster        everything else; not changed
     * @param favour        by site: factor on what it pays, 1 for the plain truth
     * @param pricePerHour  what an hour of driving costs
     */
    List<Stay> fill(Roster roster, Gap gap, double[] favour, double pricePerHour) {
        openSites(roster, gap, favour);
        pricePerSecond = pricePerHour / 3600;
        gapNumber++;
        double bestValue = -price(gap.fromPlace(), gap.toPlace());
        int bestState = NONE;
        for (int c = table.firstFrom(gap.freeAt()); c < table.size() && table.chance(c).start() < gap.dueAt(); c++) {
            int site = table.chance(c).site();
            if (!open[site]) {
                continue;
            }
            if (table.arrive(c) < earliest[site] || table.depart(c) > latest[site]
                    || roster.birdIsTaken(table.chance(c))) {
                continue;
            }
            interval[c] = freeInterval(roster, site, table.arrive(c), table.depart(c));
            if (interval[c] == NONE) {
                continue;
            }
            reachedInGap[c] = gapNumber;
            arriveFor(c, gap);
            stayOnFor(c);
            int leave = bestStateOf(c);
            double whole = value[leave] - price(site, gap.toPlace());
            if (whole > bestValue) {
                bestValue = whole;
                bestState = leave;
            }
        }
        return staysUpTo(bestState, gap.day());
    }

    private double price(int fromPlace, int toPlace) {
        return pricePerSecond * problem.roads().drivingSeconds(fromPlace, toPlace);
    }

    private void openSites(Roster roster, Gap gap, double[] favour) {
        for (int site = 0; site < open.length; site++) {
            earliest[site] = gap.freeAt() + problem.moveSeconds(gap.fromPlace(), site);
            latest[site] = gap.dueAt() - problem.moveSeconds(site, gap.toPlace());
            open[site] = earliest[site] < latest[site] && table.firstRank(site) < table.firstRank(site + 1);
            if (open[site]) {
                setPay(roster, site, favour[site]);
                open[site] = pay[site][0] > 0;
                gapRank[site] = table.rankEndedBy(site, gap.freeAt());
                filledRank[site] = gapRank[site];
            }
        }
    }

    private void setPay(Roster roster, int site, double favour) {
        Arrays.fill(pay[site], 0);
        for (int square : problem.squaresOfSite().get(site)) {
            double demand = problem.demand().get(square) * favour;
            for (int k = 0; k < tiers; k++) {
                pay[site][k] += demand * problem.tiers().next(roster.worked(square) + k);
            }
        }
    }

    /**
     * Number of the free interval of the site's squares that holds this whole stay, or NONE when another stay
     * is in the way. Two stays with the same number have no other stay between them.
     */
    private int freeInterval(Roster roster, int site, int arrival, int departure) {
        int passed = 0;
        for (int square : problem.squaresOfSite().get(site)) {
            for (Stay hold : roster.holdsOf(square)) {
                if (hold.overlaps(arrival, departure)) {
                    return NONE;
                }
                if (hold.departure() <= arrival) {
                    passed++;
                }
            }
        }
        return passed;
    }

    /** The chance is the first of a stop: from where did the team come? */
    private void arriveFor(int c, Gap gap) {
        int site = table.chance(c).site();
        double best = -price(gap.fromPlace(), site);
        int from = NONE;
        for (int other : nearest[site]) {
            if (!open[other]) {
                continue;
            }
            int ranks = table.rankDepartedBy(other, table.arrive(c) - problem.moveSeconds(other, site));
            if (ranks <= gapRank[other]) {
                continue;
            }
            fillUpTo(other, ranks);
            int left = leaveBest[ranks - 1];
            if (left != NONE) {
                double reached = value[left] - price(other, site);
                if (reached > best) {
                    best = reached;
                    from = left;
                }
            }
        }
        value[c * tiers] = best + pay[site][0];
        before[c * tiers] = from;
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
            int previous = reachable ? stayBest[(ranks - 1) * tiers + k - 1] : NONE;
            boolean worthIt = previous != NONE && pay[site][k] > 0;
            value[c * tiers + k] = worthIt ? value[previous] + pay[site][k] : Double.NEGATIVE_INFINITY;
            before[c * tiers + k] = previous;
        }
    }

    private int bestStateOf(int c) {
        int best = c * tiers;
        for (int k = 1; k < tiers; k++) {
            if (value[c * tiers + k] > value[best]) {
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
                enter(r, c);
            }
        }
        filledRank[site] = Math.max(filledRank[site], ranks);
    }

    private void enter(int r, int c) {
        int leave = bestStateOf(c);
        if (leaveBest[r] == NONE || value[leave] > value[leaveBest[r]]) {
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
