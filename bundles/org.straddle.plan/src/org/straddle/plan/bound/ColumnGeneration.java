package org.straddle.plan.bound;

import java.util.List;
import java.util.Random;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;

/**
 * Finds an upper bound for all plans, and routes that good plans are made of: a {@link RouteMaster} prices what
 * routes share, a {@link Pricing} finds the best route of each day at those prices, and so on until no route is
 * worth more than it costs. After every round the bound is valid, and it never gets worse.
 *
 * <p>Asking at prices between the best ones so far and the newest, a usual cure for leaping prices, made the bench
 * slower: a third more rounds with four fifths of the way, four times as many with a fifth.
 */
final class ColumnGeneration implements AutoCloseable {

    /** Most that {@link #vary} changes a price by, as a share of it. */
    private static final double VARIATION = 0.2;

    /** Relative to the bound; below, a gap between bound and master is rounding. */
    private static final double CLOSE = 1e-6;

    /** Rounds that only learn, without a better bound, before that ends it. */
    private static final int MOST_STALE = 25;

    private final PlanProblem problem;
    private final RouteMaster master;
    private final Pricing pricing;

    /** One day alone: whatever it serves it may be paid in full. */
    private final boolean nothingIsShared;
    private double bound = Double.POSITIVE_INFINITY;
    private Prices best;
    private boolean done;
    private int stale;
    private long work;

    /** Closes the programme when it is closed. */
    ColumnGeneration(PlanProblem problem, ChanceTable table, BirdMoments moments, OpenWants wants,
            LinearProgram program) {
        this.problem = problem;
        master = new RouteMaster(problem, wants, table, moments, program);
        pricing = !problem.windows().isEmpty() ? new WindowPricing(problem)
                : problem.relief().isNeeded() ? new ReliefPricing(problem, table, moments) : new RoutePricing(problem, table, moments);
        nothingIsShared = problem.days().size() == 1 && !problem.windows().isEmpty();
        Roster fixedOnly = new Roster(problem);
        for (int day = 0; day < problem.days().size(); day++) {
            master.add(new Route(day, fixedOnly.day(day)));
        }
    }

    /** Lets the master mix the routes of a plan that was found elsewhere. */
    void offer(List<Route> plan) {
        plan.forEach(master::add);
        pricing.know(plan);
    }

    /** Lets the master mix routes of other good plans as well. */
    void learn(List<Route> routes) {
        routes.stream().filter(pricing::isSound).forEach(master::add);
    }

    /** One round; nothing once the bound is as good as this way can make it. */
    void round() {
        if (done) {
            return;
        }
        master.solve();
        Prices prices = nothingIsShared ? master.fullPrices() : master.prices();
        long before = pricing.work();
        pricing.setPrices(prices, master.holds());
        double sum = 0;
        boolean fresh = false;
        int learnt = pricing.learnt();
        for (int day = 0; day < problem.days().size(); day++) {
            Pricing.Best found = pricing.best(day);
            sum += found.value();
            fresh |= pricing.remember(found.route()) | takeIn(found.route());
        }
        for (Route other : pricing.others()) {
            takeIn(other);
        }
        double here = master.bound(prices, sum);
        if (here < bound) {
            stale = here < bound - CLOSE * Math.abs(bound) ? 0 : stale;
            bound = here;
            best = prices;
        }
        fresh |= pricing.learnt() > learnt && stale++ < MOST_STALE;
        work = pricing.work() - before;
        done = !fresh || bound - master.worth() <= CLOSE * Math.abs(bound);
    }

    private boolean takeIn(Route route) {
        return pricing.isSound(route) && master.add(route);
    }

    boolean isDone() {
        return done;
    }

    /** How much work the last round was, in labels. */
    long work() {
        return work;
    }

    /** Makes a running round end soon; may be called from another thread. */
    void stop() {
        pricing.stop();
    }

    /** Of the last optimum of the master. */
    double masterWorth() {
        return master.worth();
    }

    double bound() {
        return bound;
    }

    /**
     * Takes in routes that are best at prices near the best ones: more to make plans of, after the bound is as good
     * as it gets. Does not change the bound.
     */
    void vary(Random random) {
        pricing.setPrices(best.varied(random, VARIATION), master.holds());
        for (int day = 0; day < problem.days().size(); day++) {
            takeIn(pricing.best(day).route());
        }
        master.solve();
    }

    /** The routes that good plans are most likely made of, by what the last optimum would lose with them. */
    List<Route> best(int most) {
        return master.best(most);
    }

    @Override
    public void close() {
        master.close();
    }
}
