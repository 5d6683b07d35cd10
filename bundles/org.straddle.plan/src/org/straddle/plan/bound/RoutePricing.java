package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
 * The best day of one team at given {@link Prices}: label setting over chances in the order of their
 * starts. A label stands for one way to the present: where it is, and the {@link Memory} of earlier stops. Its value is what
 * the stops are paid, see {@link StopPay}, less what birds, squares and driving cost.
 *
 * <p>Exact for the bound means: no day that keeps the rules is worth more. These make it so. A square that the
 * memory does not hold is paid in every stop as if it had not been worked before, which is never too little, since
 * what is paid grows ever slower; of one that it holds a level is remembered, rounded down. What
 * a stop is paid is bounded from above. Moves are {@link LeastMoves}. And the limit of
 * driving is minded only gap by gap, where the memory says so, and else left to its price. Stays are as short as their
 * turns allow, which costs no plan anything.
 *
 * <p>Departures are pushed to all sites at once, each into a queue by minute of arrival. Of the labels at one place
 * only those stay that no other beats: see {@link LabelFront}.
 */
final class RoutePricing implements Pricing {

    private static final int NONE = -1;

    /** Routes found beside the best ones, of all days together: more make the master slow. */
    private static final int MOST_OTHERS = 60;

    private final PlanProblem problem;
    private final ChanceTable table;
    private final BirdMoments moments;
    private final LeastMoves moves;
    private final FixedStayPricing fixedPricing;
    private final List<Stay> fixedStays;
    private final List<Memory> memories;
    private final int groups;
    private final int sites;
    private final int longestDay;

    // By chance.
    private final int[] siteOf;
    private final int[] intervalOfAll;
    private final int[] firstLabel;
    private final int[] endLabel;
    private final double[] costForAll;
    private final double[] heldAtArrival;
    private final double[] heldAtDeparture;

    // By chance, of the present day.
    private int[] interval;
    private double[] cost;
    private Paid alone;
    private Paid jointly;

    // By site.
    private final PayCurve[][] pay;
    private final int[] readUntil;
    private final boolean[] wanted;
    private final int[][] slots;
    private final LabelFront[] arrived;
    private final LabelFront[] left;
    private final int[] bestEnd;
    private final StopPay[] stops;
    private final StopPay[] jointStops;
    /** By day; the same object for days on which the same may be worked. */
    private final int[][] intervals;
    /** At the present prices, by what may be worked: rows that all such days share. */
    private final Map<int[], StopPay.Row[][]> sharedRows = new IdentityHashMap<>();
    /** Positions of chances that begin a stop in the present gap. */
    private final List<List<Integer>> begun;

    /** By square: its chances, by start. */
    private final int[][] chancesOf;

    /** One way to pay the visits of the present day: by site what may be paid, and the rows found so far. */
    private record Paid(StopPay[] stops, StopPay.Row[][] rows, StopPay.Terms terms, double once) {
    }

    /** Of the way to what the best route serves: a point that a shorter step does not better stays where it is. */
    private static final double SHORTEST_STEP = 0.02;

    /** Relative to the worth of a day: a route that is paid too well by less is paid right. */
    private static final double RIGHT = 1e-4;

    /** Squares that some chance serves for sure: of them a day remembers that they were worked. */
    private final BitSet sure = new BitSet();
    /** The other squares that the present day works in several visits, and where their bound touches, by group. */
    private final Map<Integer, double[]> joint = new TreeMap<>();
    /** The same by day. */
    private final List<Map<Integer, double[]>> points;
    private final double[] step;
    private int moved;

    // By site and minute of the gap: first label in the queue of those that arrive then.
    private int[][] queue = new int[0][];

    private final List<Route> others = new ArrayList<>();
    private final Labels labels = new Labels();
    private long allLabels;
    private volatile boolean stopped;
    private Prices prices;
    private Memory memory;
    private List<Decision> decisions = List.of();

    // Of the present day: by site the marks that a visit sets, those that are needed in the end, and sites not to visit.
    private final long[] visit;
    private long visitsNeeded;
    private final BitSet closed = new BitSet();
    private double secondPrice;
    private int drivingLimit;
    private Gap gap;
    private int firstMinute;
    private int minutes;

    RoutePricing(PlanProblem problem, ChanceTable table, BirdMoments moments) {
        this.problem = problem;
        this.table = table;
        this.moments = moments;
        memories = problem.days().stream().map(day -> new Memory()).toList();
        moves = new LeastMoves(problem);
        fixedPricing = new FixedStayPricing(problem, table, moments);
        fixedStays = new Roster(problem).stays();
        groups = problem.groupCount();
        sites = problem.siteCount();
        int chances = table.size();
        siteOf = new int[chances];
        intervalOfAll = new int[chances];
        firstLabel = new int[chances];
        endLabel = new int[chances];
        costForAll = new double[chances];
        heldAtArrival = new double[chances];
        heldAtDeparture = new double[chances];
        pay = new PayCurve[sites][groups];
        readUntil = new int[sites];
        wanted = new boolean[sites];
        slots = new int[sites][];
        visit = new long[sites];
        arrived = fronts(sites);
        left = fronts(sites);
        bestEnd = new int[sites];
        stops = stops();
        jointStops = stops();
        points = problem.days().stream().map(day -> (Map<Integer, double[]>) new TreeMap<Integer, double[]>()).toList();
        step = new double[problem.days().size()];
        Arrays.fill(step, 1);
        for (Chance chance : problem.chances()) {
            if (IntStream.range(0, groups).anyMatch(g -> Double.isInfinite(chance.service().amount(g)))) {
                problem.squaresOfSite().get(chance.site()).forEach(sure::set);
            }
        }
        begun = IntStream.range(0, sites).mapToObj(site -> (List<Integer>) new ArrayList<Integer>()).toList();
        chancesOf = IntStream.range(0, problem.squareCount()).mapToObj(square -> IntStream.range(0, chances)
                .filter(c -> problem.squaresOfSite().get(table.chance(c).site()).contains(square)).toArray())
                .toArray(int[][]::new);
        longestDay = problem.days().stream().mapToInt(day -> day.until() - day.from()).max().orElse(0);
        for (int c = 0; c < chances; c++) {
            siteOf[c] = table.chance(c).site();
            intervalOfAll[c] = moments.isBlocked(c) ? NONE : freeInterval(c);
        }
        intervals = intervals();
    }

    private int[][] intervals() {
        List<int[]> different = new ArrayList<>();
        return IntStream.range(0, problem.days().size()).mapToObj(day -> {
            int[] ofDay = interval(day);
            return different.stream().filter(known -> Arrays.equals(known, ofDay)).findFirst().orElseGet(() -> {
                different.add(ofDay);
                return ofDay;
            });
        }).toArray(int[][]::new);
    }

    private StopPay.Row[][] noRows() {
        return Arrays.stream(stops).map(stop -> new StopPay.Row[stop.size()]).toArray(StopPay.Row[][]::new);
    }

    private StopPay[] stops() {
        return IntStream.range(0, sites).mapToObj(site -> new StopPay(table, problem.times(), site, groups))
                .toArray(StopPay[]::new);
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

    @Override
    public void setPrices(Prices prices, List<Prices.Hold> holds) {
        this.prices = prices;
        others.clear();
        sharedRows.clear();
        for (int site = 0; site < sites; site++) {
            List<Integer> squares = problem.squaresOfSite().get(site);
            for (int g = 0; g < groups; g++) {
                int group = g;
                pay[site][g] = PayCurve.sum(squares.stream().map(square -> prices.pay()[square][group]).toList());
            }
            stops[site].setPay(pay[site]);
            jointStops[site].setPay(pay[site]);
        }
        List<HoldPrices> holdPrices = HoldPrices.bySite(problem, prices, holds);
        for (int c = 0; c < siteOf.length; c++) {
            costForAll[c] = prices.ofChance(moments, c);
            heldAtArrival[c] = holdPrices.get(siteOf[c]).until(table.arrive(c));
            heldAtDeparture[c] = holdPrices.get(siteOf[c]).until(table.depart(c));
        }
    }

    /** Bounds on visits learn where to touch. */
    @Override
    public int learnt() {
        return moved + Stream.of(stops, jointStops).flatMap(Arrays::stream).mapToInt(StopPay::learnt).sum();
    }

    /**
     * Squares that a day works in several visits are bounded in two ways, of which the lower counts: with each visit paid as
     * if it were alone, which is right where there is but one; and for the whole day by what touches the curve at one point.
     * That point moves toward what the best route serves as long as that lowers the bound.
     */
    @Override
    public Best best(int day) {
        joint.clear();
        for (int square : memories.get(day).squares()) {
            if (!sure.get(square)) {
                joint.put(square, points.get(day).computeIfAbsent(square, any -> new double[groups]));
            }
        }
        Best found = priced(day);
        if (stopped) {
            return new Best(found.route(), Double.POSITIVE_INFINITY);
        }
        if (joint.isEmpty() || found.value() - worth(found.route()) <= RIGHT * Math.abs(found.value())) {
            return found;
        }
        Map<Integer, double[]> served = served(found.route());
        for (int square : List.copyOf(joint.keySet())) {
            double[] moved = new double[groups];
            for (int g = 0; g < groups; g++) {
                double old = joint.get(square)[g];
                moved[g] = old + step[day] * (served.getOrDefault(square, new double[groups])[g] - old);
            }
            joint.put(square, moved);
        }
        Best other = priced(day);
        if (!stopped && other.value() < found.value()) {
            points.get(day).putAll(joint);
            moved++;
            step[day] = Math.min(1, 1.3 * step[day]);
            return other;
        }
        if (step[day] > SHORTEST_STEP) {
            step[day] *= 0.6;
            moved++;
        }
        return found;
    }

    /** What a route is really worth at the prices; of a day with fixed stays nothing is said. */
    private double worth(Route route) {
        double worth = -secondPrice * route.drivingSeconds(problem);
        for (Stay stay : route.stays()) {
            if (stay.fixed().isPresent()) {
                return Double.NEGATIVE_INFINITY;
            }
            for (Chance turn : stay.turns()) {
                worth -= cost[table.indexOf(turn)];
            }
            worth += heldAtArrival[table.indexOf(stay.turns().get(0))]
                    - heldAtDeparture[table.indexOf(stay.turns().get(stay.turns().size() - 1))];
        }
        for (Map.Entry<Integer, double[]> square : served(route).entrySet()) {
            for (int g = 0; g < groups; g++) {
                worth += prices.pay()[square.getKey()][g].of(square.getValue()[g]);
            }
        }
        return worth;
    }

    /** Remembers driving beyond the limit, and squares worked in two stops. */
    @Override
    public boolean remember(Route route) {
        Memory memory = memories.get(route.day());
        boolean more = !route.keepsDrivingLimit(problem) && memory.addDriving();
        Set<Integer> worked = new HashSet<>();
        Stay before = null;
        for (Stay stay : route.stays()) {
            boolean sameVisit = before != null && before.site() == stay.site() && before.fixed().isEmpty()
                    && stay.fixed().isEmpty() && (!problem.relief().isNeeded()
                            || problem.relief().goesOn(before.departure(), stay.arrival()));
            for (int square : problem.squaresOfSite().get(stay.site())) {
                if (!stay.turns().isEmpty() && !worked.add(square) && !sameVisit) {
                    more |= memory.add(square);
                }
            }
            before = stay;
        }
        return more;
    }

    /**
     * A day without fixed stays never drives beyond its limit again once it remembers driving. With them it may,
     * because each gap is minded by itself; then the row of the master has to do.
     */
    @Override
    public boolean isSound(Route route) {
        return route.stays().stream().anyMatch(stay -> stay.fixed().isPresent()) || route.keepsDrivingLimit(problem);
    }

    @Override
    public long work() {
        return allLabels;
    }

    @Override
    public void stop() {
        stopped = true;
    }

    private Map<Integer, double[]> served(Route route) {
        Map<Integer, double[]> served = new TreeMap<>();
        for (Stay stay : route.stays()) {
            for (int square : problem.squaresOfSite().get(stay.site())) {
                double[] amount = served.computeIfAbsent(square, any -> new double[groups]);
                for (Chance turn : stay.turns()) {
                    for (int g = 0; g < groups; g++) {
                        amount[g] += turn.service().amount(g);
                    }
                }
            }
        }
        return served;
    }

    /** The joint squares are taken out of what visits are paid, and are paid turn by turn. */
    private Paid paidJointly(int day) {
        double[] ofTurn = cost.clone();
        int first = table.firstFrom(problem.days().get(day).from());
        int last = table.firstFrom(problem.days().get(day).until());
        double once = 0;
        for (Map.Entry<Integer, double[]> square : joint.entrySet()) {
            for (int g = 0; g < groups; g++) {
                PayCurve curve = prices.pay()[square.getKey()][g];
                double at = square.getValue()[g];
                double slope = curve.slope(at);
                double constant = curve.of(at) - slope * at;
                once += constant;
                int[] chances = chancesOf[square.getKey()];
                int from = Arrays.binarySearch(chances, first);
                for (int i = from < 0 ? -1 - from : from; i < chances.length && chances[i] < last; i++) {
                    int c = chances[i];
                    double amount = table.chance(c).service().amount(g);
                    if (amount > 0) {
                        ofTurn[c] -= amount <= at ? slope * amount : curve.of(amount) - constant;
                    }
                }
            }
        }
        StopPay[] paid = stops.clone();
        StopPay.Row[][] rows = alone.rows.clone();
        for (int site = 0; site < sites; site++) {
            List<Integer> squares = problem.squaresOfSite().get(site);
            if (squares.stream().anyMatch(joint::containsKey)) {
                PayCurve[] others = new PayCurve[groups];
                for (int g = 0; g < groups; g++) {
                    int group = g;
                    others[g] = PayCurve.sum(squares.stream().filter(square -> !joint.containsKey(square))
                            .map(square -> prices.pay()[square][group]).toList());
                }
                paid[site] = jointStops[site];
                paid[site].setOther(others);
                rows[site] = new StopPay.Row[paid[site].size()];
            }
        }
        return new Paid(paid, rows, new StopPay.Terms(interval, ofTurn, heldAtArrival, heldAtDeparture), once);
    }

    @Override
    public void restrictTo(List<Decision> these) {
        decisions = List.copyOf(these);
    }

    /** Visits beyond those that can be marked are not asked for, which may only raise the bound. */
    private void keepTo(List<Decision> ofDay) {
        closed.clear();
        Arrays.fill(visit, 0);
        visitsNeeded = 0;
        int marks = 0;
        for (Decision decision : ofDay) {
            if (!decision.visits()) {
                decision.sites().forEach(closed::set);
            } else if (marks < Memory.MOST_VISITS) {
                long mark = Memory.visit(marks++);
                visitsNeeded |= mark;
                decision.sites().forEach(site -> visit[site] |= mark);
            }
        }
    }

    private Best priced(int day) {
        keepTo(Decision.of(day, decisions));
        secondPrice = problem.drivingPricePerHour() / 3600 + prices.driving()[day];
        drivingLimit = problem.days().get(day).drivingLimit();
        interval = intervals[day];
        cost = cost(day);
        alone = new Paid(stops, cost == costForAll ? sharedRows.computeIfAbsent(interval, any -> noRows()) : noRows(),
                new StopPay.Terms(interval, cost, heldAtArrival, heldAtDeparture), 0);
        jointly = joint.isEmpty() ? alone : paidJointly(day);
        remember(memories.get(day));
        List<Stay> fixed = fixedStays.stream().filter(stay -> stay.day() == day).toList();
        if (fixed.isEmpty() || joint.isEmpty()) {
            return priced(day, fixed);
        }
        // The gaps between fixed stays are filled one by one: no way to pay can be chosen for all of them together.
        Paid both = jointly;
        jointly = alone;
        Best one = priced(day, fixed);
        alone = both;
        jointly = both;
        Best other = priced(day, fixed);
        return other.value() + both.once < one.value() ? new Best(other.route(), other.value() + both.once) : one;
    }

    private Best priced(int day, List<Stay> fixed) {
        List<Stay> chosen = new ArrayList<>();
        List<Stay> idle = new ArrayList<>();
        double bestValue = 0;
        double idleValue = 0;
        List<Gap> gaps = Gap.between(problem, day, fixed);
        for (int i = 0; i < gaps.size(); i++) {
            gap = gaps.get(i);
            int last = fillGap(fixed.isEmpty() ? jointly.once : 0);
            double idleHere = visitsNeeded == 0 ? nothing() : Double.NEGATIVE_INFINITY;
            bestValue += last == NONE ? idleHere : whole(last);
            idleValue += idleHere;
            chosen.addAll(staysUpTo(last, day));
            if (i < fixed.size()) {
                FixedStayPricing.Best more = fixedPricing.best(fixed.get(i), alone.stops[fixed.get(i).site()],
                        alone.terms.cost());
                bestValue += more.value();
                idleValue += more.value();
                chosen.add(more.stay());
                idle.add(more.stay());
            }
        }
        if (fixed.isEmpty()) {
            noteOthers(day);
        }
        Route idleRoute = new Route(day, idle);
        int forgiven = idleRoute.drivingSeconds(problem) - idleRoute.limitedDrivingSeconds(problem);
        idleValue += forgiven * prices.driving()[day];
        return idleValue >= bestValue ? new Best(idleRoute, idleValue) : new Best(new Route(day, chosen), bestValue);
    }

    /** The best ways that end at other sites: the master learns from more than one route at a time. */
    private void noteOthers(int day) {
        IntStream.range(0, sites).filter(site -> bestEnd[site] != NONE)
                .filter(site -> whole(bestEnd[site]) > Double.NEGATIVE_INFINITY).boxed()
                .sorted(Comparator.comparingDouble(site -> -whole(bestEnd[site]))).limit(MOST_OTHERS / problem.days().size())
                .forEach(site -> others.add(new Route(day, staysUpTo(bestEnd[site], day))));
    }

    @Override
    public List<Route> others() {
        return List.copyOf(others);
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
            slots[site] = IntStream.range(0, memory.size())
                    .filter(slot -> squares.contains(memory.square(slot)) && !joint.containsKey(memory.square(slot))).toArray();
        }
    }

    private double nothing() {
        return -secondPrice * problem.roads().drivingSeconds(gap.fromPlace(), gap.toPlace());
    }

    /** Value of the whole gap when this label is the last; not worth anything when it cannot be. */
    private double whole(int label) {
        int c = labels.chance(label);
        if (driven(labels.driven(label), siteOf[c], gap.toPlace()) > drivingLimit
                || (visitsNeeded & ~(labels.memory(label) | visit[siteOf[c]])) != 0) {
            return Double.NEGATIVE_INFINITY;
        }
        return Math.min(labels.value(label), labels.jointly(label)) - heldAtDeparture[c]
                - secondPrice * problem.roads().drivingSeconds(siteOf[c], gap.toPlace());
    }

    /** The last label of the best filling, or none when driving on is best. */
    private int fillGap(double once) {
        startGap(once);
        double bestValue = visitsNeeded == 0 ? nothing() : Double.NEGATIVE_INFINITY;
        int best = NONE;
        for (int c = table.firstFrom(gap.freeAt()); c < siteOf.length && table.chance(c).start() < gap.dueAt() && !stopped; c++) {
            if (!canBeWorked(c)) {
                continue;
            }
            arrive(c);
            for (int label : end(c)) {
                double whole = whole(label);
                if (whole > bestValue) {
                    bestValue = whole;
                    best = label;
                }
                if (bestEnd[siteOf[c]] == NONE || whole > whole(bestEnd[siteOf[c]])) {
                    bestEnd[siteOf[c]] = label;
                }
                leave(label);
            }
        }
        allLabels += labels.size();
        return best;
    }

    private void startGap(double once) {
        labels.clear();
        firstMinute = Math.floorDiv(gap.freeAt(), StationTimes.STEP);
        minutes = Math.max(1, Math.floorDiv(gap.dueAt(), StationTimes.STEP) - firstMinute + 1);
        if (queue.length == 0 || queue[0].length < minutes) {
            queue = new int[sites][minutes];
        }
        for (int site = 0; site < sites; site++) {
            wanted[site] = table.firstRank(site) < table.firstRank(site + 1);
            readUntil[site] = 0;
            bestEnd[site] = NONE;
            Arrays.fill(queue[site], 0, minutes, NONE);
            arrived[site].clear();
            left[site].clear();
            begun.get(site).clear();
            if (wanted[site]) {
                queueUp(site, moves.arrival(gap.day(), gap.fromPlace(), gap.freeAt(), site),
                        -secondPrice * problem.roads().drivingSeconds(gap.fromPlace(), site), once, 0,
                        driven(0, gap.fromPlace(), site), NONE);
            }
        }
    }

    private int driven(int before, int fromPlace, int toPlace) {
        return memory.driving() ? before + problem.roads().drivingSeconds(fromPlace, toPlace) : 0;
    }

    /** @param more that it is worth jointly */
    private void queueUp(int site, int second, double value, double more, long remembered, int driven, int from) {
        int minute = -Math.floorDiv(-second, StationTimes.STEP) - firstMinute;
        if (minute >= minutes || driven > drivingLimit) {
            return;
        }
        // Where the rest of the day is too short to reach the limit, it does not matter any more.
        int minded = driven + gap.dueAt() - second <= drivingLimit ? 0 : driven;
        if (!arrived[site].beats(value, value + more, remembered, minded) && (queue[site][minute] == NONE
                || !labels.beats(queue[site][minute], value, value + more, remembered, minded))) {
            queue[site][minute] = labels.add(value, value + more, remembered, minded, from, NONE, queue[site][minute]);
        }
    }

    private boolean canBeWorked(int c) {
        return interval[c] != NONE && !closed.get(siteOf[c])
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
        firstLabel[c] = labels.size();
        for (int i = 0; i < arrived[site].size(); i++) {
            int at = arrived[site].get(i);
            labels.add(labels.value(at) + heldAtArrival[c], labels.jointly(at) + heldAtArrival[c], labels.memory(at), labels.driven(at), labels.from(at), c, 0);
        }
        endLabel[c] = labels.size();
        if (firstLabel[c] < endLabel[c]) {
            begun.get(site).add(stops[site].position(c));
        }
    }

    /** The chance is the last of a stop: labels of which none beats another, or one that left before. */
    private List<Integer> end(int c) {
        int site = siteOf[c];
        int position = stops[site].position(c);
        List<Integer> ends = new ArrayList<>();
        for (int first : begun.get(site)) {
            StopPay.Row row = row(alone, site, first);
            int at = position - first;
            int begin = stops[site].chance(first);
            if (at >= row.value().length || row.value()[at] == Double.NEGATIVE_INFINITY
                    || !problem.needsNoRelief(gap.day(), site, table.arrive(begin), table.depart(c))) {
                continue;
            }
            StopPay.Row jointRow = row(jointly, site, first);
            for (int label = firstLabel[begin]; label < endLabel[begin]; label++) {
                double value = labels.value(label) + paid(site, labels.memory(label), row, at);
                double joint = labels.jointly(label) + paid(site, labels.memory(label), jointRow, at);
                if (!left[site].beats(value - heldAtDeparture[c], joint - heldAtDeparture[c], labels.memory(label),
                        labels.driven(label))) {
                    ends.add(labels.add(value, joint, labels.memory(label), labels.driven(label), label, c, first));
                }
            }
        }
        return ends;
    }

    private StopPay.Row row(Paid paid, int site, int first) {
        StopPay.Row[] rows = paid.rows[site];
        if (rows[first] == null) {
            int longest = table.committed(gap.day()) == null ? Math.min(longestDay, problem.relief().longest()) : longestDay;
            rows[first] = paid.stops[site].row(first, paid.terms, table.chance(stops[site].chance(first)).start() + longest);
        }
        return rows[first];
    }

    /** A square that was paid before pays no more than what was left. */
    private double paid(int site, long remembered, StopPay.Row row, int at) {
        boolean before = false;
        for (int slot : slots[site]) {
            before |= memory.level(remembered, slot) > 0;
        }
        if (!before) {
            return row.value()[at];
        }
        double most = 0;
        for (int square : problem.squaresOfSite().get(site)) {
            int slot = memory.slot(square);
            int level = slot < 0 ? 0 : memory.level(remembered, slot);
            most += prices.most(square) * (Memory.ALL - level) / Memory.ALL;
        }
        return Math.min(row.value()[at], most + row.costOnly()[at]);
    }

    private void leave(int label) {
        int c = labels.chance(label);
        int site = siteOf[c];
        int second = table.depart(c);
        long remembered = labels.memory(label);
        for (int slot : slots[site]) {
            remembered = memory.plus(remembered, slot, share(memory.square(slot), labels.chance(labels.from(label)), c));
        }
        remembered |= visit[site];
        double value = labels.value(label) - heldAtDeparture[c];
        double more = labels.jointly(label) - labels.value(label);
        if (!left[site].addLeaving(labels.add(value, value + more, remembered, labels.driven(label), label, c, second))) {
            return;
        }
        for (int to = 0; to < sites; to++) {
            if (wanted[to] && (to != site || problem.relief().isNeeded())) {
                int free = to == site ? second + problem.relief().away() : second; // sooner is the same visit
                queueUp(to, moves.arrival(gap.day(), site, free, to),
                        value - secondPrice * problem.roads().drivingSeconds(site, to), more, remembered,
                        driven(labels.driven(label), site, to), label);
            }
        }
    }

    /** Of all that a square can pay, what a stop was paid at least: it works its first and its last chance. */
    private double share(int square, int first, int last) {
        double most = prices.most(square);
        double paid = 0;
        for (int g = 0; g < groups; g++) {
            double amount = table.chance(first).service().amount(g)
                    + (first == last ? 0 : table.chance(last).service().amount(g));
            paid += prices.pay()[square][g].of(amount);
        }
        return most > 0 ? paid / most : 1;
    }

    /** Its turns are chosen by the way to pay that counts. */
    private List<Stay> staysUpTo(int last, int day) {
        Paid lower = last == NONE || labels.value(last) <= labels.jointly(last) ? alone : jointly;
        List<Stay> stays = new ArrayList<>();
        for (int label = last; label != NONE; label = labels.from(labels.from(label))) {
            StopPay stop = lower.stops[siteOf[labels.chance(label)]];
            stays.addAll(0, stays(day, stop.turns(labels.count(label), stop.position(labels.chance(label)), lower.terms)));
        }
        return stays;
    }

    /** The stays of a visit: the team leaves between two where it can and where holding the squares would cost. */
    private List<Stay> stays(int day, List<Chance> turns) {
        List<Stay> stays = new ArrayList<>();
        List<Chance> present = new ArrayList<>();
        int before = NONE;
        for (Chance turn : turns) {
            int c = table.indexOf(turn);
            if (before != NONE && (interval[c] != interval[before] || table.depart(before) <= table.arrive(c)
                    && heldAtDeparture[before] < heldAtArrival[c])) {
                stays.add(Stay.around(day, present, problem.times()));
                present.clear();
            }
            present.add(turn);
            before = c;
        }
        stays.add(Stay.around(day, present, problem.times()));
        return stays;
    }
}
