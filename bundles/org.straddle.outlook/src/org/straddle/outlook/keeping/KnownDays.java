package org.straddle.outlook.keeping;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Days that were worked out already, for one thread. After an edit nearly all of them are as they were: hand them on to the
 * next state of the event by {@link #next}, which forgets those that nobody asked for again.
 */
public final class KnownDays {

    private final Map<Course, DayKeeping> days = new HashMap<>();
    private final Map<Course, List<Double>> chances = new HashMap<>();
    private final Map<Course, DayKeeping> earlierDays;
    private final Map<Course, List<Double>> earlierChances;

    /** Nothing is known yet. */
    public KnownDays() {
        this(Map.of(), Map.of());
    }

    private KnownDays(Map<Course, DayKeeping> earlierDays, Map<Course, List<Double>> earlierChances) {
        this.earlierDays = earlierDays;
        this.earlierChances = earlierChances;
    }

    /** For a later state of the event. */
    public KnownDays next() {
        return new KnownDays(days, chances);
    }

    DayKeeping of(Course course) {
        DayKeeping known = days.get(course);
        if (known == null) {
            DayKeeping earlier = earlierDays.get(course);
            known = earlier == null ? DayKeeping.of(course) : earlier;
            days.put(course, known);
        }
        return known;
    }

    /** The chances of the turns alone, which is quicker. */
    List<Double> chances(Course course) {
        DayKeeping whole = days.getOrDefault(course, earlierDays.get(course));
        if (whole != null) {
            return whole.chances();
        }
        List<Double> known = chances.get(course);
        if (known == null) {
            List<Double> earlier = earlierChances.get(course);
            known = earlier == null ? DayKeeping.chances(course) : earlier;
            chances.put(course, known);
        }
        return known;
    }
}
