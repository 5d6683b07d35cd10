package org.straddle.check.fix;

import java.util.Optional;

import org.straddle.outlook.itinerary.Work;

/** What a fix may change. */
public final class Pins {

    private Pins() {
    }

    /** Of two turns that cannot both stay, the one to change: the later, unless it is pinned; none when both are. */
    public static Optional<Work> toChange(Work earlier, Work later) {
        return !later.turn().isPinned() ? Optional.of(later)
                : !earlier.turn().isPinned() ? Optional.of(earlier) : Optional.empty();
    }
}
