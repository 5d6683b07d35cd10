package org.straddle.sky.track;

import java.time.Duration;
import java.time.Instant;

/**
 * Between instants and the seconds elapsed since one of them, leap seconds counted, as a bird's motion
 * needs it; a double holds a month to a nanosecond. An {@code Instant} has no name for the leap second
 * itself: all of it is the midnight that ends it.
 */
public final class Seconds {

    private Seconds() {
    }

    public static Instant after(Instant origin, double seconds) {
        int leaps = 0;
        if (origin.isBefore(LeapSeconds.LAST)) {
            for (Instant leap : LeapSeconds.MIDNIGHTS) {
                if (leap.isAfter(origin)) {
                    double begins = plain(origin, leap) + leaps;
                    if (seconds < begins) {
                        break;
                    }
                    if (seconds < begins + 1) {
                        return leap;
                    }
                    leaps++;
                }
            }
        }
        double labelled = seconds - leaps;
        double whole = Math.floor(labelled);
        return origin.plusSeconds((long) whole).plusNanos(Math.round((labelled - whole) * 1e9));
    }

    public static double between(Instant origin, Instant instant) {
        return plain(origin, instant) + LeapSeconds.until(instant) - LeapSeconds.until(origin);
    }

    private static double plain(Instant origin, Instant instant) {
        Duration d = Duration.between(origin, instant);
        return d.getSeconds() + d.getNano() / 1e9;
    }
}
