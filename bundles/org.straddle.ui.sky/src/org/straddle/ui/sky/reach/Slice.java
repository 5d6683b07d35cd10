package org.straddle.ui.sky.reach;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

import org.straddle.sky.Window;

/**
 * A column of the picture: a round stretch of time, cut to the pass.
 *
 * @param hereDeg elevation at the site in its middle
 */
public record Slice(Window window, double hereDeg) {

    private static final int MOST = 13;
    private static final long[] STEPS_S = {30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 21_600, 43_200, 86_400};

    /** Round stretches that fill a window; so many that numbers in them can be read. */
    static List<Window> cut(Window whole) {
        long seconds = whole.duration().toSeconds();
        long step = LongStream.of(STEPS_S).filter(s -> seconds / s < MOST).findFirst()
                .orElse(Math.max(86_400, seconds / MOST));
        List<Window> slices = new ArrayList<>();
        Instant from = whole.start();
        while (from.isBefore(whole.end())) {
            Instant round = Instant.ofEpochSecond((Math.floorDiv(from.getEpochSecond(), step) + 1) * step);
            Instant to = round.isBefore(whole.end()) ? round : whole.end();
            slices.add(new Window(from, to));
            from = to;
        }
        return slices;
    }

    static Instant middle(Window window) {
        return window.start().plus(Duration.between(window.start(), window.end()).dividedBy(2));
    }
}
