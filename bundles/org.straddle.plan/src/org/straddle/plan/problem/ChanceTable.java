package org.straddle.plan.problem;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The chances of a problem in the two orders that the refill needs: all by start, and per site by end.
 *
 * <p>A <em>rank</em> is a position in the second order; the ranks of a site are consecutive. How many
 * chances of a site are over by a given minute is looked up, not searched, because the refill asks it
 * for every pair of sites.
 */
public final class ChanceTable {

    private final Chance[] byStart;
    private final Map<Chance, Integer> indexOf = new HashMap<>();
    private final int[] arrive;
    private final int[] depart;
    private final int[] atRank;
    private final int[] firstRank;
    private final int[] endAtRank;
    private final int firstStep;
    private final int[][] departedBy;

    // By day and chance; null for days without bans or commitments, which are most.
    private final int[][] bannedBefore;
    private final double[][] committed;

    public ChanceTable(PlanProblem problem) {
        byStart = problem.chances().toArray(Chance[]::new);
        Arrays.sort(byStart, Comparator.comparingInt(Chance::start).thenComparingInt(Chance::end)
                .thenComparingInt(Chance::site).thenComparingInt(Chance::bird));
        for (int c = 0; c < byStart.length; c++) {
            indexOf.put(byStart[c], c);
        }
        arrive = Arrays.stream(byStart).mapToInt(c -> problem.times().arrivalFor(c.start())).toArray();
        depart = Arrays.stream(byStart).mapToInt(c -> problem.times().departureAfter(c.end())).toArray();
        atRank = IntStream.range(0, byStart.length).boxed()
                .sorted(Comparator.comparingInt((Integer c) -> byStart[c].site())
                        .thenComparingInt(c -> byStart[c].end()).thenComparingInt(c -> c))
                .mapToInt(Integer::intValue).toArray();
        endAtRank = new int[byStart.length];
        firstRank = new int[problem.siteCount() + 1];
        for (int r = 0; r < atRank.length; r++) {
            endAtRank[r] = byStart[atRank[r]].end();
            firstRank[byStart[atRank[r]].site() + 1] = r + 1;
        }
        for (int site = 0; site < problem.siteCount(); site++) {
            firstRank[site + 1] = Math.max(firstRank[site + 1], firstRank[site]);
        }
        firstStep = step(Arrays.stream(depart).min().orElse(0));
        int steps = step(Arrays.stream(depart).max().orElse(0)) - firstStep + 1;
        departedBy = new int[problem.siteCount()][];
        for (int site = 0; site < departedBy.length; site++) {
            departedBy[site] = departures(site, steps);
        }
        bannedBefore = new int[problem.days().size()][];
        committed = new double[bannedBefore.length][];
        for (int day = 0; day < bannedBefore.length; day++) {
            bannedBefore[day] = bannedBefore(problem, day);
            committed[day] = committed(problem, day);
        }
    }

    private int[] bannedBefore(PlanProblem problem, int day) {
        if (problem.banned().isEmpty()) {
            return null;
        }
        int[] before = new int[byStart.length];
        boolean any = false;
        for (int c = 0; c < before.length; c++) {
            before[c] = problem.banned().allows(day, byStart[c])
                    ? problem.banned().before(day, byStart[c].site(), arrive[c], depart[c]) : BannedTimes.BANNED;
            any |= before[c] != 0;
        }
        return any ? before : null;
    }

    private double[] committed(PlanProblem problem, int day) {
        List<Chance> chances = problem.commitments().of(day);
        if (chances.isEmpty()) {
            return null;
        }
        double[] worth = new double[byStart.length];
        chances.forEach(chance -> worth[indexOf.get(chance)] = problem.commitments().worth(day, chance));
        return worth;
    }

    private int[] departures(int site, int steps) {
        int[] byStep = new int[steps];
        int next = firstRank[site];
        for (int step = 0; step < steps; step++) {
            while (next < firstRank[site + 1] && step(depart[atRank[next]]) <= firstStep + step) {
                next++;
            }
            byStep[step] = next;
        }
        return byStep;
    }

    private static int step(int second) {
        return Math.floorDiv(second, StationTimes.STEP);
    }

    /** Number of a chance of the problem. */
    public int indexOf(Chance chance) {
        return indexOf.get(chance);
    }

    public int size() {
        return byStart.length;
    }

    public Chance chance(int chance) {
        return byStart[chance];
    }

    /** Latest arrival to work this chance first. */
    public int arrive(int chance) {
        return arrive[chance];
    }

    /** Earliest departure having worked this chance last. */
    public int depart(int chance) {
        return depart[chance];
    }

    /** First chance that starts at or after this second. */
    public int firstFrom(int second) {
        int low = 0;
        int high = byStart.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (byStart[middle].start() < second) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** How many banned times of its site are over before the shortest stay for a chance, or {@link BannedTimes#BANNED}. */
    public int bannedBefore(int day, int chance) {
        return bannedBefore[day] == null ? 0 : bannedBefore[day][chance];
    }

    /** Whether any ban bears on what a day may do. */
    public boolean hasBans(int day) {
        return bannedBefore[day] != null;
    }

    /** What working a chance on a day is worth beyond its squares, because it was committed. */
    public double committed(int day, int chance) {
        return committed[day] == null ? 0 : committed[day][chance];
    }

    /** The same by chance; null when nothing is committed on that day. */
    public double[] committed(int day) {
        return committed[day];
    }

    public int atRank(int rank) {
        return atRank[rank];
    }

    public int firstRank(int site) {
        return firstRank[site];
    }

    /** Rank after the last chance of the site with a departure at or before this second. */
    public int rankDepartedBy(int site, int second) {
        int step = step(second) - firstStep;
        int[] byStep = departedBy[site];
        return step < 0 ? firstRank[site] : byStep[Math.min(step, byStep.length - 1)];
    }

    /** Rank after the last chance of the site that ends at or before this second. */
    public int rankEndedBy(int site, int second) {
        int low = firstRank[site];
        int high = firstRank[site + 1];
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (endAtRank[middle] <= second) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
