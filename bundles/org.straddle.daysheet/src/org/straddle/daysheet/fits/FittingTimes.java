package org.straddle.daysheet.fits;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.straddle.sky.Window;

/**
 * Finds all moments at which a question is answered with yes, given the moments at which its answer may turn.
 *
 * <p>Between two turning points the answer is the same throughout, so one question for each point and one for each
 * stretch between give the whole answer, to the second; asking minute by minute would take longer and miss what is
 * shorter. A turning point too many costs a question; one that is missing gives wrong ranges.
 */
final class FittingTimes {

    private FittingTimes() {
    }

    /** @param within from its first second to the one before its end */
    static List<FittingRange> of(Collection<Instant> turningPoints, Window within, Predicate<Instant> fitting) {
        TreeSet<Long> seconds = new TreeSet<>();
        long first = ceiling(within.start());
        long last = ceiling(within.end()) - 1;
        for (Instant point : turningPoints) {
            seconds.add(point.getEpochSecond());
            seconds.add(point.getEpochSecond() + 1);
        }
        seconds.add(first);
        seconds.add(last);
        List<FittingRange> ranges = new ArrayList<>();
        Long open = null;
        for (long second : List.copyOf(seconds.subSet(first, true, last, true))) {
            boolean here = fitting.test(Instant.ofEpochSecond(second));
            if (here && open == null) {
                open = second;
            } else if (!here && open != null) {
                ranges.add(range(open, second - 1));
                open = null;
            }
            Long next = seconds.higher(second);
            if (next != null && next <= last && next > second + 1) {
                boolean between = fitting.test(Instant.ofEpochSecond(second + 1));
                if (between && open == null) {
                    open = second + 1;
                } else if (!between && open != null) {
                    ranges.add(range(open, second));
                    open = null;
                }
            }
        }
        if (open != null) {
            ranges.add(range(open, last));
        }
        return List.copyOf(ranges);
    }

    static long ceiling(Instant instant) {
        return instant.getNano() == 0 ? instant.getEpochSecond() : instant.getEpochSecond() + 1;
    }

    private static FittingRange range(long first, long last) {
        return new FittingRange(Instant.ofEpochSecond(first), Instant.ofEpochSecond(last));
    }
}
