package org.straddle.plan.bound;

import java.util.List;

import org.straddle.plan.problem.Route;

/** The pricing problem of {@link ColumnGeneration}: the best route of a day at given prices, or a little too good a one. */
interface Pricing {

    /**
     * The best route of a day.
     *
     * @param value its turns' pay less all prices; no route of this day is worth more
     */
    record Best(Route route, double value) {
    }

    /** @param holds what the prices of holds stand for */
    void setPrices(Prices prices, List<Prices.Hold> holds);

    Best best(int day);

    /** From now on only routes count that keep to these decisions; or more, where that cannot be told apart. */
    default void restrictTo(List<Decision> decisions) {
        // every route counts
    }

    /** Minds from now on what a route was paid too well for; whether that is new. */
    boolean remember(Route route);

    /** Whether a route that was found may stand in a plan. */
    boolean isSound(Route route);

    /** Hears of the routes of a plan: what is paid less than they are need not be looked at. */
    default void know(List<Route> plan) {
        // whoever looks at everything has no use for it
    }

    /** Good routes that were found beside the best ones since the last prices. */
    default List<Route> others() {
        return List.of();
    }

    /** How often it learnt something by which the same prices may give a better bound. */
    int learnt();

    /** How much work all that was so far, in labels: the same on any machine. */
    long work();

    /** Makes a running search end soon, with a value that is right but too high; may be called from another thread. */
    void stop();
}
