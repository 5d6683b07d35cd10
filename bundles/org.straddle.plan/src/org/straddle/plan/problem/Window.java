package org.straddle.plan.problem;

import java.util.List;
import java.util.Optional;

/**
 * Work at a site that may begin at any second of a time window, unlike a {@link Chance}, which follows a bird: a vertex of
 * the orienteering problem. Times are seconds from the problem's origin.
 *
 * @param opens   begins no earlier
 * @param closes  begins no later
 * @param seconds how long it takes, not negative
 * @param service what it is to the chasers
 */
public record Window(int site, int bird, int opens, int closes, int seconds, Service service) {

    public Window {
        if (opens > closes || seconds < 0) {
            throw new IllegalArgumentException("A window must close after it opens: " + opens + " to " + closes + ", " + seconds);
        }
    }

    /** The stay that begins the work then, no longer than it needs. */
    public Stay stay(int day, int begin, StationTimes times) {
        Chance turn = new Chance(site, bird, begin, begin + Math.max(1, seconds), service);
        return new Stay(day, site, begin - times.setUp(), begin + seconds + times.takeDown(), List.of(turn),
                Optional.empty());
    }
}
