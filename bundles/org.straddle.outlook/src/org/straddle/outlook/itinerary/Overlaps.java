package org.straddle.outlook.itinerary;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;

import org.straddle.sky.Window;

/**
 * Finds the pairs that overlap in time by one sweep: only those that are still open when the next one
 * begins are compared with it.
 */
public final class Overlaps {

    private Overlaps() {
    }

    /** @param byStart in order of start; of each pair the earlier comes first */
    public static <T> void pairs(List<T> byStart, Function<T, Window> windowOf, BiConsumer<T, T> found) {
        List<T> open = new ArrayList<>();
        for (T next : byStart) {
            open.removeIf(earlier -> !windowOf.apply(earlier).end().isAfter(windowOf.apply(next).start()));
            open.forEach(earlier -> found.accept(earlier, next));
            open.add(next);
        }
    }
}
