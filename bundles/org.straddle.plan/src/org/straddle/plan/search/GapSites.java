package org.straddle.plan.search;

import java.util.Arrays;

import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * The sites as one gap sees them: which can be reached and left in time, what their passes pay, and when
 * nobody else holds their squares. One object serves one problem, one gap after the other.
 */
final class GapSites {

    /** No free interval: another stay or a ban is in the way. */
    static final int NONE = -1;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final int groups;
    private final boolean[] open;
    private final int[] earliest;
    private final int[] latest;
    private final double[][] owed;

    private Roster roster;
    private Taste taste;
    private int day;

    GapSites(PlanProblem problem, ChanceTable table) {
        this.problem = problem;
        this.table = table;
        groups = problem.groupCount();
        open = new boolean[problem.siteCount()];
        earliest = new int[problem.siteCount()];
        latest = new int[problem.siteCount()];
        owed = new double[problem.siteCount()][groups];
    }

    void lookFrom(Gap gap, Roster roster, Taste taste) {
        this.roster = roster;
        this.taste = taste;
        day = gap.day();
        for (int site = 0; site < open.length; site++) {
            earliest[site] = problem.arrival(day, gap.fromPlace(), gap.freeAt(), site);
            latest[site] = problem.departure(day, site, gap.toPlace(), gap.dueAt());
            open[site] = earliest[site] < latest[site] && table.firstRank(site) < table.firstRank(site + 1);
            if (open[site]) {
                setOwed(site);
                open[site] = Arrays.stream(owed[site]).anyMatch(some -> some > 0);
            }
        }
        for (Chance committed : problem.commitments().of(day)) {
            open[committed.site()] |= earliest[committed.site()] < latest[committed.site()];
        }
    }

    private void setOwed(int site) {
        Arrays.fill(owed[site], 0);
        for (int square : problem.squaresOfSite().get(site)) {
            for (int g = 0; g < groups; g++) {
                owed[site][g] += owed(site, square, g);
            }
        }
    }

    /** Whether the site can be used at all, and pays or is committed. */
    boolean isOpen(int site) {
        return open[site];
    }

    /** Whether the road and the others leave room for this chance at an open site. */
    boolean canBeWorked(int chance) {
        int site = table.chance(chance).site();
        return table.arrive(chance) >= earliest[site] && table.depart(chance) <= latest[site]
                && !roster.birdIsTaken(table.chance(chance));
    }

    /** How many of a group are owed a square of the site, each square counting by itself. */
    double[] owed(int site) {
        return owed[site];
    }

    /** The same for one of its squares. */
    double owed(int site, int square, int group) {
        return taste.favour()[site] * roster.owed(square, group);
    }

    /** What a chance pays beyond its squares. */
    double committed(int chance) {
        return table.committed(day, chance);
    }

    /**
     * Number of the interval, free of bans and of other stays in the site's squares, that holds the shortest stay for
     * this chance, or {@link #NONE}. Two stays with the same number have no ban and no other stay between them.
     */
    int freeInterval(int chance) {
        int passed = table.bannedBefore(day, chance);
        if (passed == BannedTimes.BANNED) {
            return NONE;
        }
        for (int square : problem.squaresOfSite().get(table.chance(chance).site())) {
            for (Stay hold : roster.holdsOf(square)) {
                if (hold.overlaps(table.arrive(chance), table.depart(chance))) {
                    return NONE;
                }
                if (hold.departure() <= table.arrive(chance)) {
                    passed++;
                }
            }
        }
        return passed;
    }
}
