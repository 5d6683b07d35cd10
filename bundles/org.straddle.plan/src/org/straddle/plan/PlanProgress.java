package org.straddle.plan;

import java.time.Duration;

/** Is told how a search gets on. Called on the searching thread; must return soon. */
@FunctionalInterface
public interface PlanProgress {

    /** For callers that only want the result. */
    PlanProgress SILENT = (worth, iterations, elapsed) -> { };

    /**
     * The search found a better plan than any before.
     *
     * @param worth as {@link Proposal#worth()}
     */
    void improved(double worth, long iterations, Duration elapsed);

    /**
     * It is now known that no plan can be worth more than this, which is less than was known before.
     *
     * @param upperBound as {@link Proposal#upperBound()}
     * @param worth      of the best plan so far
     */
    default void bounded(double upperBound, double worth, Duration elapsed) {
    }

    /**
     * What works out the bound has died; the search goes on without it, and the last bound stays valid. Told once.
     *
     * @param why for the log
     */
    default void boundFailed(Throwable why) {
    }
}
