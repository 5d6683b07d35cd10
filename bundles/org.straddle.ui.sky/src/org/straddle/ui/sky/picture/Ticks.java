package org.straddle.ui.sky.picture;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/** Round times between two instants, at most a dozen or so. */
final class Ticks {

    private static final int MOST = 14;
    private static final long[] STEPS_MIN = {1, 2, 5, 10, 15, 30, 60, 120, 360, 720, 1440};

    private Ticks() {
    }

    static List<Instant> between(Instant from, Instant until) {
        long minutes = Duration.between(from, until).toMinutes();
        long stepS = 60 * LongStream.of(STEPS_MIN).filter(step -> minutes / step < MOST).findFirst()
                .orElse(Math.max(1, minutes / MOST));
        List<Instant> ticks = new ArrayList<>();
        long first = (Math.floorDiv(from.getEpochSecond(), stepS) + 1) * stepS;
        for (long at = first; at <= until.getEpochSecond(); at += stepS) {
            ticks.add(Instant.ofEpochSecond(at));
        }
        return ticks;
    }
}
