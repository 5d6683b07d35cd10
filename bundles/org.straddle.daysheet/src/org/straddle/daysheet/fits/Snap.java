package org.straddle.daysheet.fits;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.stream.Stream;

/** Pulls an instant to the nearest of some others, if one is near enough. */
final class Snap {

    private Snap() {
    }

    static Instant to(Stream<Instant> marks, Instant wanted, Duration reach) {
        return marks.filter(mark -> distance(mark, wanted).compareTo(reach) <= 0)
                .min(Comparator.comparing((Instant mark) -> distance(mark, wanted)).thenComparing(mark -> mark))
                .orElse(wanted);
    }

    static Duration distance(Instant a, Instant b) {
        return Duration.between(a, b).abs();
    }
}
