package org.straddle.plan;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How a new plan is to hold on to the present one.
 *
 * <p>With a worth of keeping above 0 the objective is: worth of the squares, less the price of driving, plus that worth
 * for every turn of the present plan that is kept: same team, site and bird, same time. So a turn is changed or dropped
 * only where that brings more. The bound then holds for this objective.
 *
 * <p>Once a schedule is published, what it promises counts, whether the plan was edited since or not: same team, squares
 * and bird, same minutes. A turn of the present plan that nobody was told of counts half then.
 *
 * @param from    what began before this instant stays as it was: stops, and turns in them; empty when nothing began yet
 * @param keeping worth of one kept turn, in expected chasers served; not negative
 * @param whatIfs what to plan for besides the event's own bans
 */
public record Replan(Optional<Instant> from, double keeping, List<WhatIf> whatIfs) {

    /** Plan anew, whatever was planned. */
    public static final Replan NONE = new Replan(Optional.empty(), 0, List.of());

    /** A change has to serve ten chasers more. A choice of ours. */
    public static final double USUAL_KEEPING = 10;

    /** @throws IllegalArgumentException when the worth of keeping is negative or not a number */
    public Replan {
        Objects.requireNonNull(from, "from");
        if (!(keeping >= 0) || Double.isInfinite(keeping)) {
            throw new IllegalArgumentException("a kept turn cannot be worth " + keeping);
        }
        whatIfs = List.copyOf(whatIfs);
    }
}
