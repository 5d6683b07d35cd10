package org.straddle.plan.bound;

import java.util.List;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Relief;
import org.straddle.plan.problem.Route;

/**
 * Prices days of teams that need relief in two ways, of which the lower bound counts. One minds relief; to it a return to
 * the same site is another stop, and what two stops pay together it can only bound. The other lets teams stay as long as
 * they like, so that all returns to a site are one visit, which is paid as it is. Leaving out a rule keeps a bound valid.
 * Routes come from the first, which keeps the rule.
 */
final class ReliefPricing implements Pricing {

    /** Days that the second way did not help the last time are asked again after so many prices. */
    private static final int ASKED_AGAIN = 10;

    private final Pricing minding;
    private final Pricing without;
    private final boolean[] helped;
    /** Prices that the second way has not heard of yet, since it was not asked; null when it has. */
    private Prices prices;
    private List<Prices.Hold> holds;
    private int round = -1;
    private int remembered;

    ReliefPricing(PlanProblem problem, ChanceTable table, BirdMoments moments) {
        minding = new RoutePricing(problem, table, moments);
        without = new RoutePricing(problem.with(Relief.NOT_NEEDED), table, moments);
        helped = new boolean[problem.days().size()];
    }

    @Override
    public void setPrices(Prices now, List<Prices.Hold> ofHolds) {
        minding.setPrices(now, ofHolds);
        prices = now;
        holds = ofHolds;
        round++;
    }

    @Override
    public void restrictTo(List<Decision> decisions) {
        minding.restrictTo(decisions);
        without.restrictTo(decisions);
    }

    @Override
    public Best best(int day) {
        Best found = minding.best(day);
        if (!helped[day] && (round + day) % ASKED_AGAIN != 0) {
            return found;
        }
        if (prices != null) {
            without.setPrices(prices, holds);
            prices = null;
        }
        Best other = without.best(day);
        remembered += without.remember(other.route()) ? 1 : 0;
        helped[day] = other.value() < found.value();
        return helped[day] ? new Best(found.route(), other.value()) : found;
    }

    @Override
    public boolean remember(Route route) {
        return minding.remember(route);
    }

    @Override
    public boolean isSound(Route route) {
        return minding.isSound(route);
    }

    @Override
    public void know(List<Route> plan) {
        minding.know(plan);
    }

    @Override
    public List<Route> others() {
        return minding.others();
    }

    @Override
    public int learnt() {
        return minding.learnt() + without.learnt() + remembered;
    }

    @Override
    public long work() {
        return minding.work() + without.work();
    }

    @Override
    public void stop() {
        minding.stop();
        without.stop();
    }
}
