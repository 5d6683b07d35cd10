package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;
import org.straddle.plan.problem.Window;

/**
 * The plan as a linear programme over whole routes: each team has one route a day, or a mix of several that adds up
 * to one. It is a relaxation of the problem: every plan is a solution of it with the same worth, so its optimum over
 * <em>all</em> routes is an upper bound.
 *
 * <p>Rows: a mix of routes per day; at each {@link BirdMoments moment} as many turns as the bird has room; per day
 * the limit of driving; no square held twice at a moment, added only where a solution breaks it; and per square and
 * group of chasers how large a share is served, at most by the {@link Cut}s. A cut is added where a solution lies above the
 * share that its amounts really serve (cutting planes). The form of the cuts is what makes the bound good: a route never counts for more
 * than it serves by itself.
 */
final class RouteMaster implements AutoCloseable {

    private static final double NOTHING = 1e-9;

    /** What a day without a route costs, in the worth of everything. */
    private static final double PENALTY = 2;

    /** Cuts touch at multiples of this: their error is below a thousandth of a turn's worth. */
    private static final double STEP = 0.03;
    private static final double FARTHEST = 6;

    /** Rounds of cuts at one solution; the next solution lies elsewhere anyway. */
    private static final int MOST_CUTTING = 1;

    /** A cut that would take less than this share of the worth is not worth a row. */
    private static final double TOO_LITTLE = 3e-6;

    /** The part of a route that serves a square: by group. */
    private record Serving(int column, double[] amount) {
    }

    /** The rows of one square and group. */
    private static final class Share {
        final int column;
        final Map<Integer, Integer> rowOfStep = new TreeMap<>();

        Share(int column) {
            this.column = column;
        }
    }

    private final PlanProblem problem;
    private final OpenWants wants;
    private final BirdMoments moments;
    private final ChanceTable table;
    private final LinearProgram program;
    private final int[] dayRow;
    private final int[] drivingRow;
    private final Share[][] shares;
    private final List<List<Serving>> serving = new ArrayList<>();
    private final int[] momentRow;
    private final List<Prices.Hold> holds = new ArrayList<>();
    private final List<Integer> holdRow = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final List<Integer> columns = new ArrayList<>();
    private final Set<Route> known = new HashSet<>();
    /** By day: stands for a route where the decisions leave too few; none as long as nothing is decided. */
    private final List<Integer> idleColumn = new ArrayList<>();
    private List<Decision> decisions = List.of();
    private LinearProgram.Optimum optimum;

    RouteMaster(PlanProblem problem, OpenWants wants, ChanceTable table, BirdMoments moments, LinearProgram program) {
        this.problem = problem;
        this.wants = wants;
        this.table = table;
        this.moments = moments;
        this.program = program;
        dayRow = new int[problem.days().size()];
        drivingRow = new int[dayRow.length];
        for (int day = 0; day < dayRow.length; day++) {
            dayRow[day] = program.addRow(1, 1);
            drivingRow[day] = program.addRow(Double.NEGATIVE_INFINITY, problem.days().get(day).drivingLimit());
        }
        shares = new Share[problem.squareCount()][problem.groupCount()];
        boolean[][] servable = servable();
        for (int square = 0; square < shares.length; square++) {
            serving.add(new ArrayList<>());
            for (int g = 0; g < shares[square].length; g++) {
                if (servable[square][g] && wants.of(square, g) > 0) {
                    shares[square][g] = new Share(program.addColumn(wants.of(square, g), 1));
                    addCut(square, g, 0);
                }
            }
        }
        momentRow = new int[moments.all().size()];
        for (int m = 0; m < momentRow.length; m++) {
            momentRow[m] = program.addRow(Double.NEGATIVE_INFINITY, moments.all().get(m).room());
        }
    }

    private boolean[][] servable() {
        boolean[][] servable = new boolean[problem.squareCount()][problem.groupCount()];
        for (Chance chance : problem.chances()) {
            for (int square : problem.squaresOfSite().get(chance.site())) {
                for (int g = 0; g < servable[square].length; g++) {
                    servable[square][g] |= chance.service().probability(g) > 0;
                }
            }
        }
        for (Window window : problem.windows()) {
            for (int square : problem.squaresOfSite().get(window.site())) {
                for (int g = 0; g < servable[square].length; g++) {
                    servable[square][g] |= window.service().probability(g) > 0;
                }
            }
        }
        return servable;
    }

    private boolean addCut(int square, int group, int step) {
        Share share = shares[square][group];
        if (share.rowOfStep.containsKey(step)) {
            return false;
        }
        Cut cut = cut(step);
        int row = program.addRow(Double.NEGATIVE_INFINITY, cut.constant());
        share.rowOfStep.put(step, row);
        program.set(row, share.column, 1);
        for (Serving route : serving.get(square)) {
            if (route.amount[group] > 0) {
                program.set(row, route.column, -cut.of(route.amount[group]));
            }
        }
        return true;
    }

    private static Cut cut(int step) {
        return new Cut(step * STEP);
    }

    /** Adds a route unless it is there already. */
    boolean add(Route route) {
        if (!known.add(route)) {
            return false;
        }
        int column = program.addColumn(route.committed(problem)
                - problem.drivingPricePerHour() * route.drivingSeconds(problem) / 3600, 1);
        routes.add(route);
        columns.add(column);
        if (!Decision.allow(decisions, route)) {
            program.limit(column, 0);
        }
        program.set(dayRow[route.day()], column, 1);
        program.set(drivingRow[route.day()], column, route.limitedDrivingSeconds(problem));
        served(route).forEach((square, amount) -> {
            serving.get(square).add(new Serving(column, amount));
            for (int g = 0; g < amount.length; g++) {
                if (amount[g] > 0 && shares[square][g] != null) {
                    double ofGroup = amount[g];
                    shares[square][g].rowOfStep.forEach((step, row) -> program.set(row, column, -cut(step).of(ofGroup)));
                }
            }
        });
        int[] over = new int[momentRow.length];
        for (Stay stay : momentRow.length == 0 ? List.<Stay>of() : route.stays()) {
            for (Chance turn : stay.turns()) {
                for (int m : moments.of(table.indexOf(turn))) {
                    over[m]++;
                }
            }
        }
        for (int m = 0; m < over.length; m++) {
            if (over[m] > 0) {
                program.set(momentRow[m], column, over[m]);
            }
        }
        for (int hold = 0; hold < holds.size(); hold++) {
            if (holds(route, holds.get(hold))) {
                program.set(holdRow.get(hold), column, 1);
            }
        }
        return true;
    }

    /**
     * From now on only routes that keep to these decisions are mixed. Where there are too few of them, a day may be left
     * without a route at a price that no solution pays which can do without.
     */
    void restrictTo(List<Decision> these) {
        if (idleColumn.isEmpty()) {
            for (int row : dayRow) {
                idleColumn.add(program.addColumn(-PENALTY * wants.sum(), 1));
                program.set(row, idleColumn.get(idleColumn.size() - 1), 1);
            }
        }
        List<Decision> before = decisions;
        decisions = List.copyOf(these);
        for (int r = 0; r < routes.size(); r++) {
            boolean allowed = Decision.allow(decisions, routes.get(r));
            if (allowed != Decision.allow(before, routes.get(r))) {
                program.limit(columns.get(r), allowed ? 1 : 0);
            }
        }
    }

    /** How large a share of a day's mix visits one of these sites, in the last optimum. */
    double visited(int day, Set<Integer> sites) {
        Decision visits = new Decision(day, sites, true);
        return used().stream().filter(used -> used.route.day() == day && visits.allows(used.route)).mapToDouble(Used::share)
                .sum();
    }

    /** By square: the amounts by which the route serves the groups, its fixed turns aside. */
    private Map<Integer, double[]> served(Route route) {
        Map<Integer, double[]> served = new TreeMap<>();
        for (Stay stay : route.stays()) {
            if (stay.turns().isEmpty()) {
                continue;
            }
            for (int square : problem.squaresOfSite().get(stay.site())) {
                double[] amount = served.computeIfAbsent(square, any -> new double[problem.groupCount()]);
                for (Chance turn : stay.turns()) {
                    for (int g = 0; g < amount.length; g++) {
                        amount[g] += turn.service().amount(g);
                    }
                }
            }
        }
        return served;
    }

    private boolean holds(Route route, Prices.Hold hold) {
        return route.stays().stream().anyMatch(stay -> stay.fixed().isEmpty()
                && stay.overlaps(hold.second(), hold.second() + 1)
                && problem.squaresOfSite().get(stay.site()).contains(hold.square()));
    }

    /** Solves, and solves again while squares are held twice or shares lie too high. */
    void solve() {
        int rounds = 0;
        do {
            optimum = program.solve();
        } while (addBrokenHolds() | (rounds++ < MOST_CUTTING && addBrokenShares()));
    }

    private boolean addBrokenShares() {
        double least = TOO_LITTLE * Math.max(NOTHING, Math.abs(worth()));
        boolean any = false;
        for (int square = 0; square < shares.length; square++) {
            for (int g = 0; g < shares[square].length; g++) {
                if (shares[square][g] != null) {
                    double amount = 0;
                    for (Serving route : serving.get(square)) {
                        double share = route.column < optimum.values().length ? optimum.values()[route.column] : 0;
                        amount += share > NOTHING && route.amount[g] > 0 ? share * route.amount[g] : 0;
                    }
                    double above = optimum.values()[shares[square][g].column] + Math.expm1(-amount);
                    if (above * wants.of(square, g) > least) {
                        any |= addCut(square, g, (int) Math.round(Math.min(FARTHEST, amount) / STEP));
                    }
                }
            }
        }
        return any;
    }

    private boolean addBrokenHolds() {
        if (!problem.windows().isEmpty()) {
            return false; // work with windows holds no square
        }
        Set<Prices.Hold> broken = new HashSet<>();
        List<Used> used = used();
        for (Used one : used) {
            for (Stay stay : one.route.stays()) {
                if (stay.fixed().isEmpty()) {
                    for (int square : problem.squaresOfSite().get(stay.site())) {
                        Prices.Hold hold = new Prices.Hold(square, stay.arrival());
                        if (!holds.contains(hold) && load(used, hold) > 1 + 1e-6) {
                            broken.add(hold);
                        }
                    }
                }
            }
        }
        broken.stream().sorted((a, b) -> a.second() == b.second() ? a.square() - b.square() : a.second() - b.second())
                .forEach(this::add);
        return !broken.isEmpty();
    }

    private double load(List<Used> used, Prices.Hold hold) {
        return used.stream().filter(u -> holds(u.route, hold)).mapToDouble(u -> u.share).sum();
    }

    private void add(Prices.Hold hold) {
        int row = program.addRow(Double.NEGATIVE_INFINITY, 1);
        holds.add(hold);
        holdRow.add(row);
        for (int i = 0; i < routes.size(); i++) {
            if (holds(routes.get(i), hold)) {
                program.set(row, columns.get(i), 1);
            }
        }
    }

    /** A route with the share of it that the optimum uses, above 0, at most 1. */
    private record Used(Route route, double share) {
    }

    private List<Used> used() {
        List<Used> used = new ArrayList<>();
        for (int i = 0; i < routes.size() && columns.get(i) < optimum.values().length; i++) {
            double share = optimum.values()[columns.get(i)];
            if (share > NOTHING) {
                used.add(new Used(routes.get(i), share));
            }
        }
        return used;
    }

    /** Routes that the last optimum knew, those first that it would lose least by if it had to use them. */
    List<Route> best(int most) {
        double[] losses = optimum == null ? new double[0] : optimum.losses();
        return IntStream.range(0, routes.size()).filter(r -> columns.get(r) < losses.length).boxed()
                .sorted(Comparator.comparingDouble(r -> losses[columns.get(r)])).limit(most).map(routes::get).toList();
    }

    List<Prices.Hold> holds() {
        return holds;
    }

    /** Of the last optimum, with the worth of the fixed turns. */
    double worth() {
        return wants.base() + optimum.worth();
    }

    /** Of the last optimum. */
    Prices prices() {
        PayCurve[][] pay = new PayCurve[shares.length][problem.groupCount()];
        for (int square = 0; square < pay.length; square++) {
            for (int g = 0; g < pay[square].length; g++) {
                pay[square][g] = shares[square][g] == null ? PayCurve.NOTHING : pay(shares[square][g]);
            }
        }
        return new Prices(pay, prices(momentRow), prices(drivingRow),
                prices(holdRow.stream().mapToInt(Integer::intValue).toArray()));
    }

    /** What is served is paid as if nobody else served it. */
    Prices fullPrices() {
        PayCurve[][] pay = new PayCurve[shares.length][problem.groupCount()];
        for (int square = 0; square < pay.length; square++) {
            for (int g = 0; g < pay[square].length; g++) {
                pay[square][g] = shares[square][g] == null ? PayCurve.NOTHING
                        : new PayCurve(List.of(new PayCurve.Priced(Cut.ALONE, wants.of(square, g))));
            }
        }
        return new Prices(pay, new double[momentRow.length], new double[drivingRow.length], new double[holdRow.size()]);
    }

    private PayCurve pay(Share share) {
        return new PayCurve(share.rowOfStep.entrySet().stream().map(row ->
                new PayCurve.Priced(cut(row.getKey()), Math.max(0, optimum.prices()[row.getValue()]))).toList());
    }

    private double[] prices(int[] rows) {
        double[] prices = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            prices[i] = Math.max(0, optimum.prices()[rows[i]]);
        }
        return prices;
    }

    /**
     * What no plan can be worth more than: the Lagrangian bound, valid at any prices. What is left of the worth
     * when routes are paid by the prices, and the prices of all that is shared, and the best route of each day
     * at these prices.
     *
     * @param bestOfDays sum of the values of the best routes
     */
    double bound(Prices prices, double bestOfDays) {
        double bound = wants.base() + bestOfDays;
        for (int square = 0; square < shares.length; square++) {
            for (int g = 0; g < shares[square].length; g++) {
                if (shares[square][g] != null) {
                    double paid = 0;
                    for (PayCurve.Priced cut : prices.pay()[square][g].priced()) {
                        bound += cut.price() * cut.cut().constant();
                        paid += cut.price();
                    }
                    bound += Math.max(0, wants.of(square, g) - paid);
                }
            }
        }
        for (int m = 0; m < momentRow.length; m++) {
            bound += moments.all().get(m).room() * prices.moment()[m];
        }
        for (int day = 0; day < drivingRow.length; day++) {
            bound += problem.days().get(day).drivingLimit() * prices.driving()[day];
        }
        for (double hold : prices.hold()) {
            bound += hold;
        }
        return bound;
    }

    @Override
    public void close() {
        program.close();
    }
}
