package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.StationTimes;
import org.straddle.plan.problem.Stay;

/**
 * The best day of one team at given {@link Prices}: an exact dynamic programme over chances in the order of their
 * starts. A label stands for one way to the present: the last chance worked, how many were worked in this stop, and
 * the {@link Memory} of earlier stops. Its value is what the turns pay, less what birds, squares and driving cost.
 *
 * <p>Exact for the bound means: no day that keeps the rules is worth more. Three things make it so. A square that the
 * memory does not hold is paid in every stop as if it had not been worked before, which is never too little, since
 * the next pass from a square never pays more than the one before. Moves are {@link LeastMoves}. And the limit of
 * driving is minded only gap by gap, where the memory says so, and else left to its price. Stays are as short as their turns allow, which costs no plan anything.
 *
 * <p>Departures are pushed to all sites at once, each into a queue by minute of arrival. Of the labels at one place
 * only those stay that no other beats: see {@link LabelFront}.
 */
final class RoutePricing {

    private static final int NONE = -1;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final BirdMoments moments;
    private final LeastMoves moves;
    private final FixedStayPricing fixedPricing;
    private final List<Stay> fixedStays;
    private final List<Memory> memories;
    private final int tiers;
    private final int sites;

    // By chance.
    private final int[] siteOf;
    private final int[] intervalOfAll;
    private final int[] rankBefore;
    private final int[] touched;
    private final int[] firstLabel;
    private final int[] endLabel;
    private final double[] costForAll;
    private final double[] heldAtArrival;
    private final double[] heldAtDeparture;

    // By chance, of the present day.
    private int[] interval;
    private double[] cost;

    // By site.
    private final double[][] pay;
    private final int[] filledRank;
    private final int[] frontInterval;
    private final int[] readUntil;
    private final boolean[] wanted;
    private final int[][] slots;
    private final LabelFront[] arrived;
    private final LabelFront[] left;
    private final LabelFront[][] staying;

    // By site and minute of the gap: first label in the queue of those that arrive then.
    private int[][] queue = new int[0][];

    private final Labels labels = new Labels();
    private Prices prices;
    private Memory memory;
    private double secondPrice;
    private int drivingLimit;
    private Gap gap;
    private int gapNumber;
    private int firstMinute;
    private int minutes;

    /** @param memories by day; may grow between one question and the next */
    RoutePricing(PlanProblem problem, ChanceTable table, BirdMoments moments, List<Memory> memories) {
        this.problem = problem;
        this.table = table;
        this.moments = moments;
        this.memories = memories;
        moves = new LeastMoves(problem);
        fixedPricing = new FixedStayPricing(problem, table, moments);
        fixedStays = new Roster(problem).stays();
        tiers = problem.tiers().count();
        sites = problem.siteCount();
        int chances = table.size();
        siteOf = new int[chances];
        intervalOfAll = new int[chances];
        rankBefore = new int[chances];
        touched = new int[chances];
        firstLabel = new int[chances];
        endLabel = new int[chances];
        costForAll = new double[chances];
        heldAtArrival = new double[chances];
        heldAtDeparture = new double[chances];
        pay = new double[sites][tiers];
        filledRank = new int[sites];
        frontInterval = new int[sites];
        readUntil = new int[sites];
        wanted = new boolean[sites];
        slots = new int[sites][];
        arrived = fronts(sites);
        left = fronts(sites);
        staying = IntStream.range(0, sites).mapToObj(site -> fronts(tiers)).toArray(LabelFront[][]::new);
        for (int c = 0; c < chances; c++) {
            siteOf[c] = table.chance(c).site();
            intervalOfAll[c] = moments.isBlocked(c) ? NONE : freeInterval(c);
            rankBefore[c] = table.rankEndedBy(siteOf[c], table.chance(c).start() - problem.times().turnGap());
        }
    }

    private LabelFront[] fronts(int count) {
        return IntStream.range(0, count).mapToObj(i -> new LabelFront(labels)).toArray(LabelFront[]::new);
    }

    /** Number of fixed holds of the site's squares that are over before this chance; none when one is in the way. */
    private int freeInterval(int c) {
        int passed = 0;
        for (Stay hold : fixedStays) {
            if (!Collections.disjoint(problem.squaresOfSite().get(hold.site()), problem.squaresOfSite().get(siteOf[c]))) {
                if (hold.overlaps(table.arrive(c), table.depart(c))) {
                    return NONE;
                }
                passed += hold.departure() <= table.arrive(c) ? 1 : 0;
            }
        }
        return passed;
    }

    /**
     * The best route of a day.
     *
     * @param value its turns' pay less all prices; no route of this day is worth more
     */
    record Best(Route route, double value) {
    }

    /** @param holds what the prices of holds stand for */
    void setPrices(Prices prices, List<Prices.Hold> holds) {
        this.prices = prices;
        for (int site = 0; site < sites; site++) {
            for (int k = 0; k < tiers; k++) {
                pay[site][k] = 0;
                for (int square : problem.squaresOfSite().get(site)) {
                    pay[site][k] += prices.pay(square, k);
                }
            }
        }
        List<HoldPrices> holdPrices = HoldPrices.bySite(problem, prices, holds);
        for (int c = 0; c < siteOf.length; c++) {
            costForAll[c] = prices.ofChance(moments, c);
            heldAtArrival[c] = holdPrices.get(siteOf[c]).until(table.arrive(c));
            heldAtDeparture[c] = holdPrices.get(siteOf[c]).until(table.depart(c));
        }
    }

    Best best(int day) {
        secondPrice = problem.drivingPricePerHour() / 3600 + prices.driving()[day];
        drivingLimit = problem.days().get(day).drivingLimit();
        interval = interval(day);
        cost = cost(day);
        remember(memories.get(day));
        List<Stay> fixed = fixedStays.stream().filter(stay -> stay.day() == day).toList();
        List<Stay> chosen = new ArrayList<>();
        List<Stay> idle = new ArrayList<>();
        double bestValue = 0;
        double idleValue = 0;
        List<Gap> gaps = Gap.between(problem, day, fixed);
        for (int i = 0; i < gaps.size(); i++) {
            gap = gaps.get(i);
            int last = fillGap();
            bestValue += last == NONE ? nothing() : whole(last);
            idleValue += nothing();
            chosen.addAll(staysUpTo(last, day));
            if (i < fixed.size()) {
                FixedStayPricing.Best more = fixedPricing.best(fixed.get(i), pay[fixed.get(i).site()], cost);
                bestValue += more.value();
                idleValue += more.value();
                chosen.add(more.stay());
                idle.add(more.stay());
            }
        }
        Route idleRoute = new Route(day, idle);
        int forgiven = idleRoute.drivingSeconds(problem) - idleRoute.limitedDrivingSeconds(problem);
        idleValue += forgiven * prices.driving()[day];
        return idleValue >= bestValue ? new Best(idleRoute, idleValue) : new Best(new Route(day, chosen), bestValue);
    }

    /** Bans part the time at a site as fixed holds do, but for one day only. */
    private int[] interval(int day) {
        if (!table.hasBans(day)) {
            return intervalOfAll;
        }
        int[] ofDay = new int[intervalOfAll.length];
        for (int c = 0; c < ofDay.length; c++) {
            int banned = table.bannedBefore(day, c);
            ofDay[c] = intervalOfAll[c] == NONE || banned == BannedTimes.BANNED ? NONE : intervalOfAll[c] + banned;
        }
        return ofDay;
    }

    /** Of a turn, less what it is worth to a day that committed it. */
    private double[] cost(int day) {
        double[] committed = table.committed(day);
        if (committed == null) {
            return costForAll;
        }
        double[] ofDay = costForAll.clone();
        for (int c = 0; c < ofDay.length; c++) {
            ofDay[c] -= committed[c];
        }
        return ofDay;
    }

    private void remember(Memory memory) {
        this.memory = memory;
        labels.compareBy(memory, prices);
        for (int site = 0; site < sites; site++) {
            List<Integer> squares = problem.squaresOfSite().get(site);
            slots[site] = IntStream.range(0, memory.size()).filter(slot -> squares.contains(memory.square(slot))).toArray();
        }
    }

    private double nothing() {
        return -secondPrice * problem.roads().drivingSeconds(gap.fromPlace(), gap.toPlace());
    }

    /** Value of the whole gap when this label is the last; not worth anything when it cannot be. */
    private double whole(int label) {
        int c = labels.chance(label);
        if (driven(labels.driven(label), siteOf[c], gap.toPlace()) > drivingLimit) {
            return Double.NEGATIVE_INFINITY;
        }
        return labels.value(label) - heldAtDeparture[c]
                - secondPrice * problem.roads().drivingSeconds(siteOf[c], gap.toPlace());
    }

    /** The last label of the best filling, or none when driving on is best. */
    private int fillGap() {
        startGap();
        double bestValue = nothing();
        int best = NONE;
        for (int c = table.firstFrom(gap.freeAt()); c < siteOf.length && table.chance(c).start() < gap.dueAt(); c++) {
            if (!canBeWorked(c)) {
                continue;
            }
            touched[c] = gapNumber;
            firstLabel[c] = labels.size();
            arrive(c);
            stayOn(c);
            endLabel[c] = labels.size();
            for (int label = firstLabel[c]; label < endLabel[c]; label++) {
                if (whole(label) > bestValue) {
                    bestValue = whole(label);
                    best = label;
                }
                leave(label);
            }
        }
        return best;
    }

    private void startGap() {
        gapNumber++;
        labels.clear();
        firstMinute = Math.floorDiv(gap.freeAt(), StationTimes.STEP);
        minutes = Math.max(1, Math.floorDiv(gap.dueAt(), StationTimes.STEP) - firstMinute + 1);
        if (queue.length == 0 || queue[0].length < minutes) {
            queue = new int[sites][minutes];
        }
        for (int site = 0; site < sites; site++) {
            filledRank[site] = table.rankEndedBy(site, gap.freeAt());
            frontInterval[site] = NONE;
            wanted[site] = table.firstRank(site) < table.firstRank(site + 1);
            readUntil[site] = 0;
            Arrays.fill(queue[site], 0, minutes, NONE);
            arrived[site].clear();
            left[site].clear();
            for (LabelFront front : staying[site]) {
                front.clear();
            }
            if (wanted[site]) {
                queueUp(site, moves.arrival(gap.day(), gap.fromPlace(), gap.freeAt(), site),
                        -secondPrice * problem.roads().drivingSeconds(gap.fromPlace(), site), 0,
                        driven(0, gap.fromPlace(), site), NONE);
            }
        }
    }

    private int driven(int before, int fromPlace, int toPlace) {
        return memory.driving() ? before + problem.roads().drivingSeconds(fromPlace, toPlace) : 0;
    }

    private void queueUp(int site, int second, double value, long remembered, int driven, int from) {
        int minute = -Math.floorDiv(-second, StationTimes.STEP) - firstMinute;
        if (minute >= minutes || driven > drivingLimit) {
            return;
        }
        // Where the rest of the day is too short to reach the limit, it does not matter any more.
        int minded = driven + gap.dueAt() - second <= drivingLimit ? 0 : driven;
        if (!arrived[site].beats(value, remembered, minded) && (queue[site][minute] == NONE
                || !labels.beats(queue[site][minute], value, remembered, minded))) {
            queue[site][minute] = labels.add(value, remembered, minded, from, NONE, queue[site][minute]);
        }
    }

    private boolean canBeWorked(int c) {
        return interval[c] != NONE
                && table.arrive(c) >= moves.arrival(gap.day(), gap.fromPlace(), gap.freeAt(), siteOf[c])
                && moves.arrival(gap.day(), siteOf[c], table.depart(c), gap.toPlace()) <= gap.dueAt();
    }

    /** The chance is the first of a stop. */
    private void arrive(int c) {
        int site = siteOf[c];
        int minute = Math.floorDiv(table.arrive(c), StationTimes.STEP) - firstMinute;
        for (; readUntil[site] <= minute; readUntil[site]++) {
            for (int label = queue[site][readUntil[site]]; label != NONE; label = labels.count(label)) {
                arrived[site].add(label);
            }
        }
        for (int i = 0; i < arrived[site].size(); i++) {
            int at = arrived[site].get(i);
            long remembered = labels.memory(at);
            labels.add(labels.value(at) + heldAtArrival[c] + pay(site, remembered, 0) - cost[c], remembered,
                    labels.driven(at), labels.from(at), c, 1);
        }
    }

    /** What the next turn pays after so many in this stop. */
    private double pay(int site, long remembered, int worked) {
        double sum = pay[site][worked];
        for (int slot : slots[site]) {
            int before = memory.worked(remembered, slot);
            if (before > 0) {
                int square = memory.square(slot);
                sum += prices.pay(square, before + worked) - prices.pay(square, worked);
            }
        }
        return sum;
    }

    /** The chance is the second, third, … of a stop; only where that pays more than it costs. */
    private void stayOn(int c) {
        int site = siteOf[c];
        fillUpTo(site, rankBefore[c]);
        if (frontInterval[site] != interval[c]) {
            return;
        }
        for (int k = 1; k < tiers; k++) {
            LabelFront front = staying[site][k - 1];
            for (int i = 0; i < front.size(); i++) {
                int at = front.get(i);
                double gain = pay(site, labels.memory(at), k) - cost[c];
                if (gain > 0) {
                    labels.add(labels.value(at) + gain, labels.memory(at), labels.driven(at), at, c, k + 1);
                }
            }
        }
    }

    /** All chances up to there end before the present one starts, so their labels are final. */
    private void fillUpTo(int site, int ranks) {
        for (; filledRank[site] < ranks; filledRank[site]++) {
            int c = table.atRank(filledRank[site]);
            if (touched[c] != gapNumber) {
                continue;
            }
            if (frontInterval[site] != interval[c]) {
                frontInterval[site] = interval[c];
                for (LabelFront front : staying[site]) {
                    front.clear();
                }
            }
            for (int label = firstLabel[c]; label < endLabel[c]; label++) {
                staying[site][labels.count(label) - 1].add(label);
            }
        }
    }

    private void leave(int label) {
        int c = labels.chance(label);
        int site = siteOf[c];
        int second = table.depart(c);
        long remembered = labels.memory(label);
        for (int slot : slots[site]) {
            remembered = memory.plus(remembered, slot, labels.count(label));
        }
        double value = labels.value(label) - heldAtDeparture[c];
        if (!left[site].addLeaving(labels.add(value, remembered, labels.driven(label), label, c, second))) {
            return;
        }
        for (int to = 0; to < sites; to++) {
            if (wanted[to]) {
                queueUp(to, moves.arrival(gap.day(), site, second, to),
                        value - secondPrice * problem.roads().drivingSeconds(site, to), remembered,
                        driven(labels.driven(label), site, to), label);
            }
        }
    }

    private List<Stay> staysUpTo(int last, int day) {
        List<Stay> stays = new ArrayList<>();
        List<Chance> turns = new ArrayList<>();
        for (int label = last; label != NONE; label = labels.from(label)) {
            turns.add(table.chance(labels.chance(label)));
            if (labels.count(label) == 1) {
                Collections.reverse(turns);
                stays.add(Stay.around(day, turns, problem.times()));
                turns.clear();
            }
        }
        Collections.reverse(stays);
        return stays;
    }
}
