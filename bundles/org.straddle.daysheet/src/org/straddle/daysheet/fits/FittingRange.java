package org.straddle.daysheet.fits;

import java.time.Instant;

/** Moments, in whole seconds, at which something may begin or end: from the first to the last, both included. */
public record FittingRange(Instant first, Instant last) {

    public FittingRange {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("A range must not end before it begins: " + first + "/" + last);
        }
    }

    public boolean contains(Instant instant) {
        return !instant.isBefore(first) && !instant.isAfter(last);
    }
}
