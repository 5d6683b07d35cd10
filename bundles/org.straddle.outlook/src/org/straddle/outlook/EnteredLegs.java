package org.straddle.outlook;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.LegTime;

/**
 * The drives whose time somebody entered, between whichever ends. A drive counts in both directions; of two for one pair
 * the later in the list counts. One without a time, or with an end that is gone, counts for nothing.
 */
final class EnteredLegs {

    private static final double MOST_MINUTES = 7 * 24 * 60;

    private final Map<Set<Identified>, LegTime> byEnds = new HashMap<>();

    private EnteredLegs() {
    }

    static EnteredLegs of(Event event) {
        EnteredLegs legs = new EnteredLegs();
        for (LegTime entered : event.getLegTimes()) {
            boolean hasEnds = entered.getFrom() != null && entered.getTo() != null
                    && entered.getFrom() != entered.getTo();
            if (hasEnds && entered.getMinutes() > 0 && entered.getMinutes() <= MOST_MINUTES) {
                legs.byEnds.put(Set.of(entered.getFrom(), entered.getTo()), entered);
            }
        }
        return legs;
    }

    Optional<LegTime> between(Identified from, Identified to) {
        return from == to ? Optional.empty() : Optional.ofNullable(byEnds.get(Set.of(from, to)));
    }
}
