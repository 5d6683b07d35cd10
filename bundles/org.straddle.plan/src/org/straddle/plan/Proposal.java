package org.straddle.plan;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A whole plan, ready to look at and to apply. It names objects of the snapshot it was made from; their
 * ids lead to the live ones.
 *
 * @param stops      the pinned and the proposed ones, by team day and arrival
 * @param worth      sum over squares of demand times repeat worths, pinned stops included, less a small
 *                   price for driving; no unit, comparable only within one event
 * @param upperBound no plan of this event can be worth more; empty when the planner knows none
 * @param uncovered  squares that somebody needs and the plan does not work, most needed first
 * @param seed       of the search
 * @param iterations how many the search made
 * @param elapsed    wall-clock time of the search
 * @param ending     why the search ended
 */
public record Proposal(List<PlannedStop> stops, double worth, OptionalDouble upperBound,
        List<UncoveredSquare> uncovered, long seed, long iterations, Duration elapsed, Ending ending) {

    /** Why a search ended. */
    public enum Ending {
        /** The limit of time or iterations was reached. */
        LIMIT,
        /** Somebody cancelled: this is the best plan until then. */
        STOPPED,
        /** There was nothing to search: no free time, or nothing to work. */
        NOTHING_TO_PLAN
    }

    public Proposal {
        stops = List.copyOf(stops);
        uncovered = List.copyOf(uncovered);
    }
}
