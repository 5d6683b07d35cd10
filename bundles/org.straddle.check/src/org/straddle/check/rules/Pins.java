package org.straddle.check.rules;

import java.util.Optional;

import org.straddle.outlook.itinerary.Work;

/** What a mend may change. */
final class Pins {

    private Pins() {
    }

    /** Of two turns that cannot both stay, the one to change: the later, unless it is pinned; none when both are. */
    static Optional<Work> toChange(Work earlier, Work later) {
        return !later.turn().isPinned() ? Optional.of(later)
                : !earlier.turn().isPinned() ? Optional.of(earlier) : Optional.empty();
    }
}
