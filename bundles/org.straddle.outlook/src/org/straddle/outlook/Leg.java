package org.straddle.outlook;

import java.time.Duration;

/**
 * A drive between two places, estimated from the distance.
 *
 * @param roadKm  length of the road
 * @param driving time at the wheel
 * @param breaks  time for breaks on the way
 */
public record Leg(double roadKm, Duration driving, Duration breaks) {

    /** Driving and breaks. */
    public Duration total() {
        return driving.plus(breaks);
    }
}
