package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.OpenTiers;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;

/**
 * The plan as a linear programme over whole routes: each team has one route a day, or a mix of several that adds up
 * to one. It is a relaxation of the problem: every plan is a solution of it with the same worth, so its optimum over
 * <em>all</em> routes is an upper bound.
 *
 * <p>Rows: a mix of routes per day; at each {@link BirdMoments moment} as many turns as the bird has room; per day
 * the limit of driving; no square held twice at a moment, added only where a solution breaks it; and per square and k
 * how many of its first k passes are worked. The last kind is what makes the bound good: a route counts there with
 * {@code min(its passes, k)}, so half a route that works a square four times does not count as two
 * routes that work it once. Their sum is never below {@code min(all passes, k)}, because a minimum with a constant
 * is subadditive.
 */
public final class RouteMaster implements AutoCloseable {

    private static final double NOTHING = 1e-9;

    private final PlanProblem problem;
    private final OpenTiers tiers;
    private final BirdMoments moments;
    private final ChanceTable table;
    private final LinearProgram program;
    private final int[] dayRow;
    private final int[] drivingRow;
    private final int[][] tierRow;
    private final int[] momentRow;
    private final List<Prices.Hold> holds = new ArrayList<>();
    private final List<Integer> holdRow = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final List<Integer> columns = new ArrayList<>();
    private final Set<Route> known = new HashSet<>();
    private LinearProgram.Optimum optimum;

    RouteMaster(PlanProblem problem, OpenTiers tiers, ChanceTable table, BirdMoments moments, LinearProgram program) {
        this.problem = problem;
        this.tiers = tiers;
        this.table = table;
        this.moments = moments;
        this.program = program;
        dayRow = new int[problem.days().size()];
        drivingRow = new int[dayRow.length];
        for (int day = 0; day < dayRow.length; day++) {
            dayRow[day] = program.addRow(1, 1);
            drivingRow[day] = program.addRow(Double.NEGATIVE_INFINITY, problem.days().get(day).drivingLimit());
        }
        tierRow = new int[problem.squareCount()][];
        for (int square = 0; square < tierRow.length; square++) {
            tierRow[square] = new int[tiers.count(square)];
            for (int k = 0; k < tierRow[square].length; k++) {
                tierRow[square][k] = program.addRow(Double.NEGATIVE_INFINITY, 0);
                int passes = program.addColumn(tiers.step(square, k), k + 1);
                program.set(tierRow[square][k], passes, 1);
            }
        }
        momentRow = new int[moments.all().size()];
        for (int m = 0; m < momentRow.length; m++) {
            momentRow[m] = program.addRow(Double.NEGATIVE_INFINITY, moments.all().get(m).room());
        }
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
        program.set(dayRow[route.day()], column, 1);
        program.set(drivingRow[route.day()], column, route.limitedDrivingSeconds(problem));
        double[][] worked = worked(route);
        for (int square = 0; square < worked.length; square++) {
            for (int k = 0; worked[square] != null && k < worked[square].length; k++) {
                program.set(tierRow[square][k], column, -worked[square][k]);
            }
        }
        int[] over = new int[momentRow.length];
        for (Stay stay : route.stays()) {
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

    /** By square and k: how many of its first k + 1 passes the route works; null for squares it does not. */
    private double[][] worked(Route route) {
        int[] passes = new int[problem.squareCount()];
        for (Stay stay : route.stays()) {
            problem.squaresOfSite().get(stay.site()).forEach(square -> passes[square] += stay.turns().size());
        }
        double[][] worked = new double[passes.length][];
        for (int square = 0; square < worked.length; square++) {
            if (passes[square] > 0) {
                worked[square] = new double[tiers.count(square)];
                for (int k = 0; k < worked[square].length; k++) {
                    worked[square][k] = Math.min(passes[square], k + 1);
                }
            }
        }
        return worked;
    }

    private boolean holds(Route route, Prices.Hold hold) {
        return route.stays().stream().anyMatch(stay -> stay.fixed().isEmpty()
                && stay.overlaps(hold.second(), hold.second() + 1)
                && problem.squaresOfSite().get(stay.site()).contains(hold.square()));
    }

    /** Solves, and solves again while squares are held twice. */
    void solve() {
        do {
            optimum = program.solve();
        } while (addBrokenHolds());
    }

    private boolean addBrokenHolds() {
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
        return tiers.base() + optimum.worth();
    }

    /** Of the last optimum. */
    Prices prices() {
        double[][] tier = new double[tierRow.length][];
        for (int square = 0; square < tier.length; square++) {
            tier[square] = prices(tierRow[square]);
        }
        return new Prices(tier, prices(momentRow), prices(drivingRow),
                prices(holdRow.stream().mapToInt(Integer::intValue).toArray()));
    }

    private double[] prices(int[] rows) {
        double[] prices = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            prices[i] = Math.max(0, optimum.prices()[rows[i]]);
        }
        return prices;
    }

    /**
     * What no plan can be worth more than: the Lagrangian bound, valid at any prices. What is left of the worth of
     * passes when routes are paid by the prices, and the prices of all that is shared, and the best route of each day
     * at these prices.
     *
     * @param bestOfDays sum of the values of the best routes
     */
    double bound(Prices prices, double bestOfDays) {
        double bound = tiers.base() + bestOfDays;
        for (int square = 0; square < tierRow.length; square++) {
            for (int k = 0; k < tierRow[square].length; k++) {
                bound += (k + 1) * Math.max(0, tiers.step(square, k) - prices.tier()[square][k]);
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
