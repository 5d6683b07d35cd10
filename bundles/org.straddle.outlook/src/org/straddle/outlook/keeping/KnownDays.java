package org.straddle.outlook.keeping;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Days that were worked out already. After an edit nearly all of them are as they were: hand the same ones on to the next
 * state of the event. Safe for use by many threads.
 */
public final class KnownDays {

    /** Some megabytes; a large plan has some forty days of teams, and each edit makes a few new ones. */
    private static final int MOST = 2000;

    private final Map<Course, DayKeeping> days = new ConcurrentHashMap<>();
    private final Map<Course, List<Double>> chances = new ConcurrentHashMap<>();

    DayKeeping of(Course course) {
        return known(days, course, DayKeeping::of);
    }

    /** The chances of the turns alone, which is quicker. */
    List<Double> chances(Course course) {
        DayKeeping whole = days.get(course);
        return whole == null ? known(chances, course, DayKeeping::chances) : whole.chances();
    }

    private static <T> T known(Map<Course, T> all, Course course, Function<Course, T> computed) {
        T known = all.get(course);
        if (known == null) {
            if (all.size() >= MOST) {
                all.clear();
            }
            known = computed.apply(course);
            all.put(course, known);
        }
        return known;
    }
}
