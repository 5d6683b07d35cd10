package org.straddle.plan.event;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

import org.straddle.sky.Window;

/**
 * The problem's seconds and the instants they stand for.
 *
 * @param origin second 0, on a whole minute
 */
public record ProblemClock(Instant origin) {

    /** Some thirty years: what lies farther off is a slip of the keyboard, and meets nothing. */
    private static final long FARTHEST = 1_000_000_000;

    /** Counts from the last whole minute up to an instant. */
    public static ProblemClock from(Instant instant) {
        return new ProblemClock(instant.truncatedTo(ChronoUnit.MINUTES));
    }

    /** The last whole second up to an instant. */
    public int floor(Instant instant) {
        long seconds = Duration.between(origin, instant).getSeconds();
        return (int) Math.max(-FARTHEST, Math.min(FARTHEST, seconds));
    }

    /** The first whole second from an instant on. */
    public int ceiling(Instant instant) {
        return floor(instant) + (instant.getNano() > 0 ? 1 : 0);
    }

    Instant instant(int second) {
        return origin.plusSeconds(second);
    }

    Window window(int start, int end) {
        return new Window(instant(start), instant(end));
    }
}
