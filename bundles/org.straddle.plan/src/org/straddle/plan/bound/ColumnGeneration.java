package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;

/**
 * Finds an upper bound for all plans, and routes that good plans are made of: a {@link RouteMaster} prices what
 * routes share, a {@link Pricing} finds the best route of each day at those prices, and so on until no route is
 * worth more than it costs. After every round the bound is valid, and it never gets worse. The same for a part of all
 * plans, a {@link Node}.
 *
 * <p>Newest prices leap. So it asks at prices between the newest and the best ones so far (<em>smoothing</em>).
 */
final class ColumnGeneration implements AutoCloseable {

    /** Most that {@link #vary} changes a price by, as a share of it. */
    private static final double VARIATION = 0.2;

    /** Relative to the bound; below, a gap between bound and master is rounding. */
    private static final double CLOSE = 1e-6;

    /** Rounds that only learn, without a better bound, before that ends it. */
    private static final int MOST_STALE = 25;

    /**
     * Of the way from the newest prices to the best. On the bench half the way takes small and large events as far in about
     * half the time, and medium ones in the same.
     */
    private static final double SMOOTHING = 0.5;

    /** The same in turn after some rounds in vain: pricing is not exact, so other prices may show what these do not. */
    private static final double[] OTHER_SMOOTHING = { 0, 0.5, 0.7, 0.3 };
    private static final int PATIENCE = 6;

    private final PlanProblem problem;
    private final RouteMaster master;
    private final Pricing pricing;

    /** One day alone: whatever it serves it may be paid in full. */
    private final boolean nothingIsShared;
    private final boolean smooth;
    private final Node root = Node.root();
    private Node present = root;
    private long work;
    private List<Route> found = List.of();
    private volatile boolean stopped;

    /** Closes the programme when it is closed. */
    ColumnGeneration(PlanProblem problem, ChanceTable table, BirdMoments moments, OpenWants wants,
            LinearProgram program) {
        this.problem = problem;
        master = new RouteMaster(problem, wants, table, moments, program);
        pricing = !problem.windows().isEmpty() ? new WindowPricing(problem)
                : problem.relief().isNeeded() ? new ReliefPricing(problem, table, moments) : new RoutePricing(problem, table, moments);
        smooth = problem.windows().isEmpty();
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

    /** All plans. */
    Node root() {
        return root;
    }

    /** A round for all plans; nothing once the bound is as good as this way can make it. */
    void round() {
        if (!root.isDone()) {
            round(root);
        }
    }

    /** One round for the plans of a node. */
    void round(Node node) {
        double mixed = mixed(node);
        Prices newest = nothingIsShared ? master.fullPrices() : master.prices();
        double way = smooth && node.best() != null ? smoothing(node.roundsInVain()) : 0;
        Prices prices = way == 0 ? newest : newest.toward(node.best(), way);
        long before = pricing.work();
        pricing.setPrices(prices, master.holds());
        double sum = 0;
        boolean fresh = false;
        int learnt = pricing.learnt();
        List<Route> ofDays = new ArrayList<>();
        for (int day = 0; day < problem.days().size(); day++) {
            Pricing.Best best = pricing.best(day);
            sum += best.value();
            fresh |= pricing.remember(best.route()) | takeIn(best.route());
            ofDays.add(best.route());
        }
        found = ofDays;
        for (Route other : pricing.others()) {
            takeIn(other);
        }
        node.took(prices, master.bound(prices, sum), mixed, CLOSE * Math.abs(node.bound()));
        fresh |= pricing.learnt() > learnt && node.mayLearn(MOST_STALE);
        work = pricing.work() - before;
        node.ended(fresh, way == 0, PATIENCE);
        if (node.bound() - mixed <= CLOSE * Math.abs(node.bound())) {
            node.isProven();
        }
    }

    private static double smoothing(int inVain) {
        return inVain < PATIENCE ? SMOOTHING : OTHER_SMOOTHING[(inVain - PATIENCE) % OTHER_SMOOTHING.length];
    }

    /** What the best mix is worth of those routes known by now that keep to the decisions of a node: no more than its bound. */
    double mixed(Node node) {
        if (node != present) {
            present = node;
            master.restrictTo(node.decisions());
            pricing.restrictTo(node.decisions());
        }
        master.solve();
        return master.worth();
    }

    /** How large a part of the last mix visits one of these sites on a day, 0 to 1. */
    double visited(int day, Set<Integer> sites) {
        return master.visited(day, sites);
    }

    /** By day: the route that pricing paid best in the last round, too well perhaps. */
    List<Route> found() {
        return found;
    }

    private boolean takeIn(Route route) {
        return pricing.isSound(route) && master.add(route);
    }

    boolean isDone() {
        return root.isDone();
    }

    /** How much work the last round was, in labels. */
    long work() {
        return work;
    }

    /** Makes a running round end soon; may be called from another thread. */
    void stop() {
        stopped = true;
        pricing.stop();
    }

    boolean isStopped() {
        return stopped;
    }

    /** Of the last optimum of the master. */
    double masterWorth() {
        return master.worth();
    }

    double bound() {
        return root.bound();
    }

    /**
     * Takes in routes that are best at prices near the best ones: more to make plans of, after the bound is as good
     * as it gets. Does not change the bound.
     */
    void vary(Random random) {
        mixed(root);
        pricing.setPrices(root.best().varied(random, VARIATION), master.holds());
        for (int day = 0; day < problem.days().size(); day++) {
            takeIn(pricing.best(day).route());
        }
        master.solve();
    }

    /** The routes that good plans are most likely made of, by what the last optimum would lose with them. */
    List<Route> best(int most) {
        if (present != root) {
            mixed(root);
        }
        return master.best(most);
    }

    @Override
    public void close() {
        master.close();
    }
}
