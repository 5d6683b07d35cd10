package org.straddle.plan;

import java.time.Duration;
import java.util.Objects;
import java.util.OptionalLong;

/**
 * How long to search for a plan, and from which seed.
 *
 * <p>The same event, seed and number of iterations give the same plan on any machine. A run that the
 * clock ends gives the plan of the number of iterations it reached ({@link Proposal#iterations()}), so
 * it can be repeated as well.
 *
 * @param time       wall-clock limit, not negative
 * @param seed       of the random choices
 * @param iterations limit, not negative; whichever limit is reached first ends the search
 * @param replan     how to hold on to the present plan
 */
public record PlanSettings(Duration time, long seed, OptionalLong iterations, Replan replan) {

    /** Longer than anybody waits, yet it can be added to a clock reading. */
    private static final Duration UNLIMITED = Duration.ofDays(365);

    /** @throws IllegalArgumentException when a limit is negative */
    public PlanSettings {
        Objects.requireNonNull(iterations, "iterations");
        Objects.requireNonNull(replan, "replan");
        if (time.isNegative() || iterations.orElse(0) < 0) {
            throw new IllegalArgumentException("negative limits of a search: " + time + ", "
                    + iterations);
        }
        time = time.compareTo(UNLIMITED) < 0 ? time : UNLIMITED;
    }

    /** Limited by the clock alone. */
    public PlanSettings(Duration time, long seed) {
        this(time, seed, OptionalLong.empty());
    }

    /** A plan from nothing. */
    public PlanSettings(Duration time, long seed, OptionalLong iterations) {
        this(time, seed, iterations, Replan.NONE);
    }

    /** The same search, holding on to the present plan. */
    public PlanSettings with(Replan changed) {
        return new PlanSettings(time, seed, iterations, changed);
    }

    /** Limited by work alone, whatever time it takes. */
    public static PlanSettings ofIterations(long iterations, long seed) {
        return new PlanSettings(UNLIMITED, seed, OptionalLong.of(iterations));
    }
}
