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
import org.straddle.plan.problem.Sitting;
import org.straddle.plan.problem.Stay;

/**
 * Fills one gap of one team in the best way, all else staying as it is: a dynamic programme over chances in
 * time order. A state is the last chance worked; it is reached from an
 * earlier chance of the same stop, or from the best departure of another site that the road allows.
 *
 * <p>Why not simply append the best next stop: a stop pays through the passes that follow and through the
 * time it leaves for others, which only looking at the whole gap tells.
 *
 * <p>A state keeps one way to reach it, the best so far, and its value is the truth for that way; where teams need relief,
 * it keeps one for each of {@value #AGES} parts of the time that a team may be at a site, by how long it has been there,
 * since the best way may have to end first. Who was served in
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
    private static final int AGES = 3;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final GapSites at;
    private final int groups;
    private final int[][] nearest;
    private final boolean[][] shareSquares;
    private final double[] fresh;
    private final int ages;

    // By state, which is a chance and an age: the best way to it.
    private final double[] value;
    private final int[] before;
    private final int[] stopBefore;
    private final int[] driven;
    private final int[] since;
    // By state and group: the part that this stop has not served, with this chance.
    private final double[] unserved;

    // By chance, valid in the present gap only, and only where its number stands.
    private final int[] reachedInGap;
    private final int[] interval;

    // By rank: which state is best among those of this chance and of those of its site that end earlier.
    private final int[] leaveBest;
    private final int[] stayBest;
    private final int[] stayInterval;

    // By site: ranks at which the gap begins and up to which the tables by rank are filled.
    private final int[] gapRank;
    private final int[] filledRank;

    // The present gap.
    private Gap gap;
    private Taste taste;
    private Sitting sittingBefore;
    private Sitting sittingAfter;
    private double pricePerSecond;
    private int drivingLeft;
    private int gapNumber;

    Refill(PlanProblem problem, ChanceTable table) {
        this.problem = problem;
        this.table = table;
        groups = problem.groupCount();
        int chances = table.size();
        int sites = problem.siteCount();
        ages = problem.relief().isNeeded() ? AGES : 1;
        value = new double[chances * ages];
        before = new int[chances * ages];
        stopBefore = new int[chances * ages];
        driven = new int[chances * ages];
        since = new int[chances * ages];
        unserved = new double[chances * ages * groups];
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
        if (problem.relief().isNeeded()) {
            List<Sitting> sittings = Sitting.of(problem, gap.day(), roster.day(gap.day()));
            sittingBefore = Sitting.at(sittings, gap.fromPlace(), gap.freeAt());
            sittingAfter = Sitting.at(sittings, gap.toPlace(), gap.dueAt());
        }
        at.lookFrom(gap, roster, taste);
        for (int site = 0; site < gapRank.length; site++) {
            gapRank[site] = table.rankEndedBy(site, gap.freeAt());
            filledRank[site] = gapRank[site];
        }
        double bestValue = -price(gap.fromPlace(), gap.toPlace());
        int bestState = NONE;
        for (int c = table.firstFrom(gap.freeAt()); c < table.size() && table.chance(c).start() < gap.dueAt(); c++) {
            if (reach(c)) {
                double home = price(site(c), gap.toPlace());
                for (int s = c * ages; s < (c + 1) * ages; s++) {
                    if (value[s] - home > bestValue && maySitOn(s)) {
                        bestValue = value[s] - home;
                        bestState = s;
                    }
                }
            }
        }
        return staysUpTo(bestState, gap.day());
    }

    private int site(int c) {
        return table.chance(c).site();
    }

    /** Whether the stay after the gap, at the same site, does not become too long. */
    private boolean maySitOn(int s) {
        int c = s / ages;
        return sittingAfter == null || sittingAfter.site() != site(c)
                || !problem.relief().goesOn(table.depart(c), sittingAfter.from())
                || problem.needsNoRelief(gap.day(), site(c), since[s], sittingAfter.until());
    }

    /** Sets the states of a chance, if it can be worked at all. */
    private boolean reach(int c) {
        if (!at.isOpen(site(c)) || !at.canBeWorked(c)) {
            return false;
        }
        interval[c] = at.freeInterval(c);
        if (interval[c] == GapSites.NONE) {
            return false;
        }
        Arrays.fill(value, c * ages, (c + 1) * ages, Double.NEGATIVE_INFINITY);
        arriveFor(c);
        stayOnFor(c);
        boolean reached = false;
        for (int s = c * ages; s < (c + 1) * ages; s++) {
            if (value[s] > Double.NEGATIVE_INFINITY) {
                reached = true;
                int previous = before[s] == stopBefore[s] ? NONE : before[s];
                for (int g = 0; g < groups; g++) {
                    unserved[s * groups + g] = (previous == NONE ? 1 : unserved[previous * groups + g])
                            * (1 - table.chance(c).service().probability(g));
                }
            }
        }
        reachedInGap[c] = reached ? gapNumber : 0;
        return reached;
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
     * What a chance pays on a way whose stops before this one end in a state.
     *
     * @param left by group from an index on: the part that this stop has not served so far
     */
    private double pay(int c, int lastStop, double[] left, int from) {
        int site = site(c);
        boolean alone = true;
        for (int stop = lastStop; stop != NONE && alone; stop = stopBefore[stop]) {
            alone = !shareSquares[site][site(stop / ages)];
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
                if (problem.squaresOfSite().get(site(stop / ages)).contains(square)) {
                    ofSquare *= unserved[stop * groups + group];
                }
            }
            sum += ofSquare;
        }
        return sum;
    }

    /** The chance is the first of a stop: from where did the team come? */
    private void arriveFor(int c) {
        int site = site(c);
        int back = problem.roads().drivingSeconds(site, gap.toPlace());
        int direct = problem.roads().drivingSeconds(gap.fromPlace(), site);
        double atMost = pay(c, NONE, fresh, 0);
        if (direct + back <= drivingLeft) {
            boolean goesOn = sittingBefore != null && sittingBefore.site() == site
                    && problem.relief().goesOn(sittingBefore.until(), table.arrive(c));
            enter(c, NONE, direct, goesOn ? sittingBefore.from() : table.arrive(c), atMost - pricePerSecond * direct);
        }
        for (int other : nearest[site]) {
            if (at.isOpen(other)) {
                int latest = problem.departure(gap.day(), other, site, table.arrive(c));
                arriveFrom(other, latest, c, atMost, back);
                if (other == site && problem.relief().isNeeded()) {
                    arriveFrom(other, Math.min(latest, table.arrive(c) - problem.relief().away()), c, atMost, back);
                }
            }
        }
    }

    /** @param latest when it left the other site @param atMost what the chance pays @param back the drive that follows */
    private void arriveFrom(int other, int latest, int c, double atMost, int back) {
        int ranks = table.rankDepartedBy(other, latest);
        if (ranks <= gapRank[other]) {
            return;
        }
        fillUpTo(other, ranks);
        int left = leaveBest[ranks - 1];
        if (left == NONE) {
            return;
        }
        boolean goesOn = other == site(c) && problem.relief().goesOn(table.depart(left / ages), table.arrive(c));
        int from = goesOn ? since[left] : table.arrive(c);
        int drive = problem.roads().drivingSeconds(other, site(c));
        double reached = value[left] - pricePerSecond * drive;
        if (reached + atMost > value[state(c, from)] && driven[left] + drive + back <= drivingLeft) {
            enter(c, left, driven[left] + drive, from, reached + pay(c, left, fresh, 0));
        }
    }

    /** A chance worked by a team that has been at the site since some second. */
    private int state(int c, int from) {
        long age = ages * (long) (table.depart(c) - from) / problem.relief().longest();
        return c * ages + (int) Math.min(ages - 1, age);
    }

    private void enter(int c, int lastStop, int drivenUntil, int from, double reached) {
        int s = state(c, from);
        if (reached > value[s] && problem.needsNoRelief(gap.day(), site(c), from, table.depart(c))) {
            value[s] = reached;
            before[s] = lastStop;
            stopBefore[s] = lastStop;
            driven[s] = drivenUntil;
            since[s] = from;
        }
    }

    /** The chance is the second, third, … of a stop. */
    private void stayOnFor(int c) {
        int site = site(c);
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
                for (int s = previous * ages; s < (previous + 1) * ages; s++) {
                    stayOn(c, s);
                }
            }
        }
        if (first > gapRank[site] && stayInterval[first - 1] == interval[c] && stayBest[first - 1] != NONE) {
            stayOn(c, stayBest[first - 1]);
        }
    }

    /** Among equals the team stays, for fewer moves, or moves where the taste is so. */
    private void stayOn(int c, int previous) {
        if (value[previous] == Double.NEGATIVE_INFINITY
                || !problem.needsNoRelief(gap.day(), site(c), since[previous], table.depart(c))) {
            return;
        }
        int s = state(c, since[previous]);
        double more = pay(c, stopBefore[previous], unserved, previous * groups);
        double lead = value[previous] + more - value[s];
        if (more > 0 && (lead > EQUAL || lead > -EQUAL && !taste.splitting())) {
            value[s] = value[previous] + more;
            before[s] = previous;
            stopBefore[s] = stopBefore[previous];
            driven[s] = driven[previous];
            since[s] = since[previous];
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
        int best = c * ages;
        for (int s = best + 1; s < (c + 1) * ages; s++) {
            best = value[s] > value[best] ? s : best;
        }
        if (leaveBest[r] == NONE || value[best] > value[leaveBest[r]]) {
            leaveBest[r] = best;
        }
        int known = stayInterval[r] == interval[c] ? stayBest[r] : NONE;
        stayInterval[r] = interval[c];
        stayBest[r] = known == NONE || value[best] > value[known] ? best : known;
    }

    private List<Stay> staysUpTo(int state, int day) {
        List<Stay> stays = new ArrayList<>();
        List<Chance> turns = new ArrayList<>();
        for (int s = state; s != NONE; s = before[s]) {
            turns.add(table.chance(s / ages));
            if (before[s] == stopBefore[s]) {
                Collections.reverse(turns);
                stays.add(Stay.around(day, turns, problem.times()));
                turns.clear();
            }
        }
        Collections.reverse(stays);
        return stays;
    }
}
