package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.StationTimes;
import org.straddle.plan.problem.Stay;
import org.straddle.plan.problem.Window;

/**
 * Fills a day with work that may begin at any time of a {@link Window}: again and again one more visit goes in where it
 * delays the others least. Every visit knows when it begins at the earliest and at the latest, so that the visits behind it
 * can still be made (<em>forward slack</em>): whether one more fits in a place is then asked of its two neighbours only.
 *
 * <p>M. W. P. Savelsbergh: The vehicle routing problem with time windows: minimizing route duration. ORSA Journal on
 * Computing 4 (1992) 146-154 (forward slack). P. Vansteenwegen, W. Souffriau, G. Vanden Berghe, D. Van Oudheusden: Iterated
 * local search for the team orienteering problem with time windows. Computers &amp; Operations Research 36 (2009) 3281-3290
 * (the square of what a visit brings, by the time it takes). J. Christiaens, G. Vanden Berghe: Slack induction by string
 * removals for vehicle routing problems. Transportation Science 54 (2020) 417-433 (insertion in a given order, with blinks).
 */
final class Insertion {

    /** Which visit goes in next. */
    enum Order {
        /** The one that brings most for the time it takes, asked anew after each. */
        MOST_FOR_TIME,
        /** A random order: each where it fits best, if it fits. */
        AT_RANDOM,
        /** Those that bring most first. */
        MOST_FIRST
    }

    /** One place in so many is overlooked, to come to plans that the best place never leads to. */
    private static final int BLINK = 50;

    private static final double NO_PLACE = -1;

    private final PlanProblem problem;
    private final StationTimes times;
    private final int[][] drives;

    // By site.
    private final Window[] windows;
    private final boolean[] visited;
    private final double[] gain;
    private final double[] rate;

    /** Sites to try, those that still may fit first. */
    private final int[] candidates;

    // The visits of the day between its start and its end, by position.
    private final int[] place;
    private final int[] earliest;
    private final int[] free;
    private final int[] latest;
    private int size;

    // The present day.
    private PlanDay route;
    private boolean pauses;
    private int day;
    private double pricePerSecond;
    private int drivingLeft;
    private Random random;
    private int untilBlink;
    /** Whether a place costs the way to it rather than the time. */
    private boolean byDetour;

    // Of the place that was found best for a site.
    private int bestAt;
    private int bestCost;
    private double bestGain;

    Insertion(PlanProblem problem) {
        this.problem = problem;
        times = problem.times();
        drives = new int[problem.roads().places()][problem.roads().places()];
        for (int from = 0; from < drives.length; from++) {
            for (int to = 0; to < drives.length; to++) {
                drives[from][to] = problem.leastSeconds(from, to);
            }
        }
        windows = new Window[problem.siteCount()];
        problem.windows().forEach(window -> windows[window.site()] = window);
        visited = new boolean[windows.length];
        gain = new double[windows.length];
        rate = new double[windows.length];
        candidates = new int[windows.length];
        place = new int[windows.length + 2];
        earliest = new int[windows.length + 2];
        free = new int[windows.length + 2];
        latest = new int[windows.length + 2];
    }

    /** Adds visits to a day as long as one fits that pays. */
    void fill(Roster roster, int day, Taste taste) {
        this.day = day;
        route = problem.days().get(day);
        pauses = !route.pauses().isEmpty();
        random = taste.random();
        untilBlink = random == null ? 0 : random.nextInt(2 * BLINK);
        pricePerSecond = taste.pricePerHour() / 3600;
        byDetour = pricePerSecond > 0 && random != null && random.nextBoolean();
        read(roster.day(day));
        drivingLeft = route.drivingLimit() - driving();
        int before = size;
        int count = look(roster, taste);
        switch (taste.order()) {
            case MOST_FOR_TIME -> insertBest(count);
            case AT_RANDOM -> insertInOrder(count, false);
            case MOST_FIRST -> insertInOrder(count, true);
        }
        if (size > before) {
            roster.restore(day, stays());
        }
    }

    private void read(List<Stay> stays) {
        size = 0;
        place[size++] = route.startPlace();
        for (Stay stay : stays) {
            place[size++] = stay.site();
        }
        place[size++] = route.endPlace();
        free[0] = route.from();
        latest[size - 1] = route.until();
        forward(1);
        backward(size - 2);
    }

    /** When the visits from a position on begin at the earliest. */
    private void forward(int from) {
        for (int i = from; i < size - 1; i++) {
            Window here = windows[place[i]];
            earliest[i] = Math.max(here.opens(), ready(place[i - 1], free[i - 1], place[i]));
            free[i] = earliest[i] + here.seconds() + times.takeDown();
        }
    }

    /** When the visits up to a position begin at the latest. */
    private void backward(int from) {
        for (int i = from; i > 0; i--) {
            Window here = windows[place[i]];
            int due = i == size - 2 ? latest[i + 1] : latest[i + 1] - times.setUp();
            int leaving = pauses ? problem.departure(day, place[i], place[i + 1], due) : due - drives[place[i]][place[i + 1]];
            latest[i] = Math.min(here.closes(), leaving - times.takeDown() - here.seconds());
        }
    }

    /** As {@link PlanProblem#arrival}, of the present day; asked millions of times. */
    private int arrival(int from, int leaving, int to) {
        return pauses ? problem.arrival(day, from, leaving, to) : leaving + drives[from][to];
    }

    /** When work may begin at a site after leaving a place. */
    private int ready(int from, int leaving, int site) {
        return arrival(from, leaving, site) + times.setUp();
    }

    private int driving() {
        int seconds = 0;
        for (int i = 1; i < size; i++) {
            seconds += problem.roads().drivingSeconds(place[i - 1], place[i]);
        }
        return seconds;
    }

    /** Which sites could be added. */
    private int look(Roster roster, Taste taste) {
        int count = 0;
        for (Stay stay : roster.day(day)) {
            visited[stay.site()] = true;
        }
        for (int site = 0; site < windows.length; site++) {
            if (!visited[site] && windows[site] != null) {
                gain[site] = taste.favour()[site] * gain(roster, windows[site]);
                if (gain[site] > 0) {
                    candidates[count++] = site;
                }
            }
            visited[site] = false;
        }
        return count;
    }

    private double gain(Roster roster, Window window) {
        double sum = 0;
        for (int square : problem.squaresOfSite().get(window.site())) {
            for (int g = 0; g < problem.groupCount(); g++) {
                sum += roster.owed(square, g) * window.service().probability(g);
            }
        }
        return sum;
    }

    /**
     * A rate that was asked before is the truth or nearly so: what went in since mostly takes time from others. So only
     * the places beside a new visit are asked at once, and all places again of the site that leads.
     */
    private void insertBest(int count) {
        int left = count;
        for (int i = 0; i < left; i++) {
            rate[candidates[i]] = findPlace(candidates[i]) ? rate() : NO_PLACE;
        }
        while (left > 0) {
            int lead = leader(left);
            int site = candidates[lead];
            double before = rate[site];
            if (before > NO_PLACE && findPlace(site)) {
                rate[site] = rate();
                if (rate[site] < before && leader(left) != lead) {
                    continue;
                }
                insert(site, bestAt);
                lookBeside(bestAt, left);
            }
            candidates[lead] = candidates[--left];
        }
    }

    private int leader(int count) {
        int lead = 0;
        for (int i = 1; i < count; i++) {
            lead = rate[candidates[i]] > rate[candidates[lead]] ? i : lead;
        }
        return lead;
    }

    /** The places before and behind a new visit. */
    private void lookBeside(int at, int count) {
        for (int i = 0; i < count; i++) {
            int site = candidates[i];
            bestCost = Integer.MAX_VALUE;
            lookAt(site, at);
            lookAt(site, at + 1);
            if (bestCost < Integer.MAX_VALUE) {
                rate[site] = Math.max(rate[site], rate());
            }
        }
    }

    private double rate() {
        return bestGain * bestGain / Math.max(1, bestCost);
    }

    private void insertInOrder(int count, boolean mostFirst) {
        for (int left = count; left > 0; left--) {
            int next = mostFirst ? most(left) : random == null ? left - 1 : random.nextInt(left);
            int site = candidates[next];
            candidates[next] = candidates[left - 1];
            if (findPlace(site)) {
                insert(site, bestAt);
            }
        }
    }

    private int most(int count) {
        int most = 0;
        for (int i = 1; i < count; i++) {
            most = gain[candidates[i]] > gain[candidates[most]] ? i : most;
        }
        return most;
    }

    /** Looks for the place that costs least; whether there is one. */
    private boolean findPlace(int site) {
        bestCost = Integer.MAX_VALUE;
        int closes = windows[site].closes();
        int soonest = windows[site].opens() + windows[site].seconds();
        for (int i = 0; i < size - 1 && free[i] <= closes; i++) {
            if (latest[i + 1] < soonest) {
                continue; // what follows there has to begin before
            }
            if (random != null && --untilBlink < 0) {
                untilBlink = random.nextInt(2 * BLINK);
            } else {
                lookAt(site, i);
            }
        }
        return bestCost < Integer.MAX_VALUE;
    }

    /** Whether a site fits behind the visit at a position, better than where it was found to fit before. */
    private void lookAt(int site, int i) {
        Window window = windows[site];
        int begin = Math.max(window.opens(), ready(place[i], free[i], site));
        if (begin > window.closes()) {
            return;
        }
        int leaving = begin + window.seconds() + times.takeDown();
        boolean last = i == size - 2;
        int next = place[i + 1];
        int then = last ? arrival(site, leaving, next) : ready(site, leaving, next);
        if (then > latest[i + 1]) {
            return;
        }
        int detour = problem.roads().drivingSeconds(place[i], site) + problem.roads().drivingSeconds(site, next)
                - problem.roads().drivingSeconds(place[i], next);
        int cost = byDetour ? detour
                : then - (last ? arrival(place[i], free[i], next) : ready(place[i], free[i], next));
        if (cost < bestCost) {
            double net = gain[site] - pricePerSecond * detour;
            if (detour <= drivingLeft && net > 0) {
                bestCost = cost;
                bestAt = i;
                bestGain = net;
            }
        }
    }

    /** Puts a site behind the visit at a position. */
    private void insert(int site, int after) {
        drivingLeft -= problem.roads().drivingSeconds(place[after], site)
                + problem.roads().drivingSeconds(site, place[after + 1])
                - problem.roads().drivingSeconds(place[after], place[after + 1]);
        System.arraycopy(place, after + 1, place, after + 2, size - after - 1);
        latest[size] = latest[size - 1];
        System.arraycopy(latest, after + 1, latest, after + 2, size - after - 1);
        place[after + 1] = site;
        size++;
        forward(after + 1);
        backward(after + 1);
    }

    private List<Stay> stays() {
        List<Stay> stays = new ArrayList<>(size);
        for (int i = 1; i < size - 1; i++) {
            stays.add(windows[place[i]].stay(day, earliest[i], times));
        }
        return stays;
    }
}
