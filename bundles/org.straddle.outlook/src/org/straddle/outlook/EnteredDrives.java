package org.straddle.outlook;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.EnteredDrive;

/**
 * The drives whose time somebody entered, between whichever ends. A drive counts in both directions; of two for one pair
 * the later in the list counts. One without a time, or with an end that is gone, counts for nothing.
 */
final class EnteredDrives {

    private static final double MOST_MINUTES = 7 * 24 * 60;

    private final Map<Set<Identified>, EnteredDrive> byEnds = new HashMap<>();

    private EnteredDrives() {
    }

    static EnteredDrives of(Event event) {
        EnteredDrives roads = new EnteredDrives();
        for (EnteredDrive entered : event.getEnteredDrives()) {
            boolean hasEnds = entered.getFrom() != null && entered.getTo() != null
                    && entered.getFrom() != entered.getTo();
            if (hasEnds && entered.getMinutes() > 0 && entered.getMinutes() <= MOST_MINUTES) {
                roads.byEnds.put(Set.of(entered.getFrom(), entered.getTo()), entered);
            }
        }
        return roads;
    }

    Optional<EnteredDrive> between(Identified from, Identified to) {
        return from == to ? Optional.empty() : Optional.ofNullable(byEnds.get(Set.of(from, to)));
    }
}
