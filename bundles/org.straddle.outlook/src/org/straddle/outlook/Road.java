package org.straddle.outlook;

import java.time.Duration;

/**
 * The road between two places and how long it takes: estimated from the distance, or as somebody entered it.
 *
 * @param roadKm  its length
 * @param driving time at the wheel
 * @param breaks  time for breaks on the way
 * @param origin  where an entered time comes from; empty for an estimate
 */
public record Road(double roadKm, Duration driving, Duration breaks, String origin) {

    /** An estimate. */
    public Road(double roadKm, Duration driving, Duration breaks) {
        this(roadKm, driving, breaks, "");
    }

    /** Driving and breaks. */
    public Duration total() {
        return driving.plus(breaks);
    }

    /** Whether somebody entered or imported the time. */
    public boolean isEntered() {
        return !origin.isEmpty();
    }
}
