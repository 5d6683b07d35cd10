package org.straddle.sky;

import java.time.Duration;
import java.time.Instant;

/** Between instants and seconds counted from one of them; a double holds a month to a nanosecond. */
final class Seconds {

    private Seconds() {
    }

    static Instant after(Instant origin, double seconds) {
        double whole = Math.floor(seconds);
        return origin.plusSeconds((long) whole).plusNanos(Math.round((seconds - whole) * 1e9));
    }

    static double between(Instant origin, Instant instant) {
        Duration d = Duration.between(origin, instant);
        return d.getSeconds() + d.getNano() / 1e9;
    }
}
