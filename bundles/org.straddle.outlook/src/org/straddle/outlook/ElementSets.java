package org.straddle.outlook;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.sky.ElementSet;
import org.straddle.sky.Window;

/**
 * The element sets of one bird. Each rules the time in which its epoch is the nearest: the error of a
 * set grows with its age, before the epoch as after it.
 */
final class ElementSets {

    /** A set and the time it rules. */
    record Reign(ElementSet set, Window window) {
    }

    private final List<ElementSet> byEpoch;

    /** @param sets of two with one epoch the later in the list, imported later, counts */
    ElementSets(Collection<ElementSet> sets) {
        Map<Instant, ElementSet> latest = new LinkedHashMap<>();
        sets.forEach(set -> latest.put(set.epoch(), set));
        byEpoch = latest.values().stream().sorted(Comparator.comparing(ElementSet::epoch)).toList();
    }

    boolean isEmpty() {
        return byEpoch.isEmpty();
    }

    Optional<ElementSet> nearest(Instant instant) {
        return byEpoch.size() == 1 ? Optional.of(byEpoch.get(0)) : byEpoch.stream()
                .min(Comparator.comparing(set -> Duration.between(set.epoch(), instant).abs()));
    }

    /** Who rules when in a window, in time order, without gaps; empty when there is no set. */
    List<Reign> reigns(Window within) {
        List<Reign> reigns = new ArrayList<>();
        Instant from = within.start();
        for (int i = 0; i < byEpoch.size() && from.isBefore(within.end()); i++) {
            Instant until = i + 1 == byEpoch.size() ? within.end()
                    : middle(byEpoch.get(i).epoch(), byEpoch.get(i + 1).epoch());
            if (until.isAfter(within.end())) {
                until = within.end();
            }
            if (until.isAfter(from)) {
                reigns.add(new Reign(byEpoch.get(i), new Window(from, until)));
                from = until;
            }
        }
        return reigns;
    }

    ElementSets without(Collection<ElementSet> refused) {
        return new ElementSets(byEpoch.stream().filter(set -> !refused.contains(set)).toList());
    }

    private static Instant middle(Instant a, Instant b) {
        return a.plus(Duration.between(a, b).dividedBy(2));
    }
}
