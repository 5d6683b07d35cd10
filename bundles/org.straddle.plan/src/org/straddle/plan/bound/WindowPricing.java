package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;
import org.straddle.plan.problem.StationTimes;
import org.straddle.plan.problem.Window;

/**
 * The best day of one team at given {@link Prices} where work has windows of time: label setting in the order of time. A
 * label stands for one way to the present: the last site, when the team is free there, what it was paid, and which earlier
 * sites it must not visit again. It remembers only those that lie in the <em>ng-set</em> of every site since. The sets grow
 * by what the best way visited twice, so the value can only come down to the truth, from above.
 *
 * <p>A label is given up when even its {@link CompletionBounds completion bound} leads to nothing better than the best way
 * that is known. When there are too many labels, those that are left count with that bound: too high, but valid.
 *
 * <p>G. Righini, M. Salani: Decremental state space relaxation strategies and initialization heuristics for solving the
 * orienteering problem with time windows with dynamic programming. Computers &amp; Operations Research 36 (2009) 1191-1203.
 * The package's page names the papers on ng-routes.
 */
final class WindowPricing implements Pricing {

    /** More are not worth the time and the memory. */
    private static final int MOST_LABELS = 400_000;

    /** How many at first: the first prices are poor ones, and each time there may be twice as many. */
    private static final int FIRST_LABELS = 10_000;

    /** Of the routes found beside the best. */
    private static final int MOST_OTHERS = 10;

    private static final int NONE = -1;

    /** Times are told apart so finely when labels are put in order. */
    private static final int BUCKETS = 4096;

    private final PlanProblem problem;
    private final StationTimes times;
    private final Window[] windows;
    private final int sites;
    private final int words;
    private final long[][] ngSet;
    private final boolean[] isShortCut;
    private final List<Route> known = new ArrayList<>();
    private final List<Route> others = new ArrayList<>();

    private Prices prices;
    private final double[] pay;
    private List<Best> found = new ArrayList<>();
    private int learnt;
    private int mostLabels = FIRST_LABELS;
    private long all;
    private volatile boolean stopped;

    // The labels of the present day.
    private double[] value = new double[1024];
    private int[] free = new int[1024];
    private int[] site = new int[1024];
    private int[] from = new int[1024];
    private int[] next = new int[1024];
    private long[] memory;
    private int size;

    // By site: labels that were extended, those of most value first.
    private final int[][] front;
    private final int[] frontSize;

    // The present day.
    private PlanDay route;
    private int day;
    private double secondPrice;
    private CompletionBounds completion;
    private final int[] bucket = new int[BUCKETS];

    WindowPricing(PlanProblem problem) {
        this.problem = problem;
        times = problem.times();
        sites = problem.siteCount();
        windows = new Window[sites];
        problem.windows().forEach(window -> windows[window.site()] = window);
        words = (sites + 63) / 64;
        ngSet = new long[sites][words];
        memory = new long[1024 * words];
        pay = new double[sites];
        front = new int[sites][16];
        frontSize = new int[sites];
        isShortCut = new boolean[sites];
        for (int s = 0; s < sites; s++) {
            ngSet[s][s >> 6] |= 1L << s;
            isShortCut[s] = windows[s] != null && isShortCut(s);
        }
    }

    /** Whether a way over a site, work included, may be quicker than the direct one: distances may be rounded so. */
    private boolean isShortCut(int over) {
        int least = windows[over].seconds() + times.setUp() + times.takeDown();
        int places = problem.roads().places();
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                if (problem.leastSeconds(a, over) + least + problem.leastSeconds(over, b) < problem.leastSeconds(a, b)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Override
    public void setPrices(Prices prices, List<Prices.Hold> holds) {
        this.prices = prices;
        for (int s = 0; s < sites; s++) {
            pay[s] = 0;
            if (windows[s] != null) {
                for (int square : problem.squaresOfSite().get(s)) {
                    for (int g = 0; g < problem.groupCount(); g++) {
                        pay[s] += prices.pay()[square][g].of(windows[s].service().amount(g));
                    }
                }
            }
        }
        found = new ArrayList<>();
        others.clear();
    }

    /** Days that are alike have the same answer. */
    @Override
    public Best best(int day) {
        for (Best before : found) {
            if (areAlike(before.route().day(), day)) {
                return new Best(on(day, before.route()), before.value());
            }
        }
        Best best = search(day);
        found.add(best);
        return best;
    }

    private boolean areAlike(int one, int other) {
        PlanDay a = problem.days().get(one);
        PlanDay b = problem.days().get(other);
        return a.from() == b.from() && a.until() == b.until() && a.startPlace() == b.startPlace()
                && a.endPlace() == b.endPlace() && a.pauses().equals(b.pauses())
                && prices.driving()[one] == prices.driving()[other];
    }

    private static Route on(int day, Route route) {
        return new Route(day, route.stays().stream()
                .map(stay -> new Stay(day, stay.site(), stay.arrival(), stay.departure(), stay.turns(), stay.fixed())).toList());
    }

    private Best search(int day) {
        this.day = day;
        route = problem.days().get(day);
        secondPrice = problem.drivingPricePerHour() / 3600 + prices.driving()[day];
        completion = new CompletionBounds(problem, windows, route, day, pay, secondPrice);
        Arrays.fill(bucket, NONE);
        Arrays.fill(frontSize, 0);
        size = 0;
        double idle = -secondPrice * problem.roads().drivingSeconds(route.startPlace(), route.endPlace());
        Best best = new Best(new Route(day, List.of()), idle);
        for (Route other : known) {
            double worth = value(other);
            if (areAlike(other.day(), day) && worth > best.value()) {
                best = new Best(on(day, other), worth);
            }
        }
        double most = best.value();
        int last = NONE;
        extend(NONE, route.startPlace(), route.from(), 0, most);
        double left = Double.NEGATIVE_INFINITY;
        for (int b = 0; b < BUCKETS; b++) {
            while (bucket[b] != NONE) {
                int label = bucket[b];
                bucket[b] = next[label];
                double reach = value[label] + completion.after(site[label], free[label], before(label));
                if (reach <= most || isBeaten(label)) {
                    continue;
                }
                if (size >= mostLabels || stopped) {
                    left = Math.max(left, reach);
                    continue;
                }
                keep(label);
                double whole = value[label] - secondPrice * problem.roads().drivingSeconds(site[label], route.endPlace());
                if (whole > most) {
                    most = whole;
                    last = label;
                }
                extend(label, site[label], free[label], value[label], most);
            }
        }
        all += size + completion.work();
        if (last != NONE) {
            best = new Best(route(last), most);
        }
        noteOthers(last);
        if (left > most) {
            mostLabels = Math.min(MOST_LABELS, 2 * mostLabels);
            learnt++;
        }
        return new Best(best.route(), Math.max(best.value(), left));
    }

    /** What a route of this or another day is paid, each site once. */
    private double value(Route other) {
        double sum = -secondPrice * new Route(day, other.stays()).drivingSeconds(problem);
        Set<Integer> visited = new HashSet<>();
        for (Stay stay : other.stays()) {
            sum += visited.add(stay.site()) ? pay[stay.site()] : 0;
        }
        return sum;
    }

    /** Where a team was before the last site; none when it came from its start. */
    private int before(int label) {
        return from[label] == NONE ? NONE : site[from[label]];
    }

    private void extend(int label, int place, int leaving, double paid, double most) {
        for (int to = 0; to < sites; to++) {
            if (windows[to] == null || to == place && label != NONE || pay[to] <= 0 && !isShortCut[to]
                    || label != NONE && (memory[label * words + (to >> 6)] >>> to & 1) != 0) {
                continue;
            }
            int begin = Math.max(windows[to].opens(), completion.ready(place, leaving, to));
            if (begin > windows[to].closes()) {
                continue;
            }
            int until = begin + windows[to].seconds() + times.takeDown();
            double worth = paid + pay[to] - secondPrice * problem.roads().drivingSeconds(place, to);
            if (worth + completion.after(to, until, label == NONE ? NONE : place) > most) {
                add(label, to, until, worth);
            }
        }
    }

    private void add(int before, int to, int until, double worth) {
        if (size == value.length) {
            value = Arrays.copyOf(value, 2 * size);
            free = Arrays.copyOf(free, 2 * size);
            site = Arrays.copyOf(site, 2 * size);
            from = Arrays.copyOf(from, 2 * size);
            next = Arrays.copyOf(next, 2 * size);
            memory = Arrays.copyOf(memory, 2 * size * words);
        }
        value[size] = worth;
        free[size] = until;
        site[size] = to;
        from[size] = before;
        for (int word = 0; word < words; word++) {
            memory[size * words + word] = before == NONE ? 0 : memory[before * words + word] & ngSet[to][word];
        }
        memory[size * words + (to >> 6)] |= 1L << to;
        if (!isBeaten(size)) {
            int b = (int) Math.min(BUCKETS - 1L, (long) (until - route.from()) * BUCKETS / (route.until() - route.from() + 1L));
            next[size] = bucket[b];
            bucket[b] = size++;
        }
    }

    /** Whether another way to the same site is as early, paid as much, and forbids no more. */
    private boolean isBeaten(int label) {
        int[] others = front[site[label]];
        for (int i = 0; i < frontSize[site[label]] && value[others[i]] >= value[label]; i++) {
            if (free[others[i]] <= free[label] && forbidsNoMore(others[i], label)) {
                return true;
            }
        }
        return false;
    }

    private boolean forbidsNoMore(int label, int other) {
        for (int word = 0; word < words; word++) {
            if ((memory[label * words + word] & ~memory[other * words + word]) != 0) {
                return false;
            }
        }
        return true;
    }

    private void keep(int label) {
        int at = site[label];
        if (frontSize[at] == front[at].length) {
            front[at] = Arrays.copyOf(front[at], 2 * frontSize[at]);
        }
        int i = frontSize[at]++;
        while (i > 0 && value[front[at][i - 1]] < value[label]) {
            front[at][i] = front[at][i - 1];
            i--;
        }
        front[at][i] = label;
    }

    private Route route(int last) {
        List<Stay> stays = new ArrayList<>();
        for (int label = last; label != NONE; label = from[label]) {
            Window window = windows[site[label]];
            stays.add(0, window.stay(day, free[label] - window.seconds() - times.takeDown(), times));
        }
        return new Route(day, stays);
    }

    /** More good ways: the master learns from those that visit no site twice, and the sets from the others. */
    private void noteOthers(int best) {
        List<Integer> ends = new ArrayList<>();
        for (int s = 0; s < sites; s++) {
            for (int i = 0; i < Math.min(2, frontSize[s]); i++) {
                if (front[s][i] != best) {
                    ends.add(front[s][i]);
                }
            }
        }
        ends.stream().sorted((a, b) -> Double.compare(value[b], value[a])).limit(MOST_OTHERS).map(this::route)
                .forEach(route -> {
                    if (!remember(route) && isSound(route)) {
                        others.add(route);
                    }
                });
    }

    @Override
    public List<Route> others() {
        return List.copyOf(others);
    }

    /** What is visited twice is forbidden to all in between. */
    @Override
    public boolean remember(Route route) {
        boolean more = false;
        List<Stay> stays = route.stays();
        for (int i = 0; i < stays.size(); i++) {
            int twice = stays.get(i).site();
            for (int j = i + 1; j < stays.size(); j++) {
                if (stays.get(j).site() == twice) {
                    for (int k = i + 1; k < j; k++) {
                        long[] ng = ngSet[stays.get(k).site()];
                        more |= (ng[twice >> 6] >>> twice & 1) == 0;
                        ng[twice >> 6] |= 1L << twice;
                    }
                    break;
                }
            }
        }
        learnt += more ? 1 : 0;
        return more;
    }

    @Override
    public boolean isSound(Route route) {
        return route.stays().stream().map(Stay::site).distinct().count() == route.stays().size()
                && route.keepsDrivingLimit(problem);
    }

    @Override
    public void know(List<Route> plan) {
        known.clear();
        known.addAll(plan);
    }

    @Override
    public int learnt() {
        return learnt;
    }

    @Override
    public long work() {
        return all;
    }

    @Override
    public void stop() {
        stopped = true;
    }
}
