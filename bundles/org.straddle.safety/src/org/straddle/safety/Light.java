package org.straddle.safety;

import java.time.Duration;
import java.time.Instant;

import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Sun;

/** The light at a site while a team is there, by the sun alone: fog, rain and mountains take more of it. */
public enum Light {
    /** The sun stands well above the horizon all the time. */
    DAY,
    /** At some time it is dark, or the sun is so low that drivers look into it. */
    POOR,
    /** Nobody said when the team is there. */
    UNKNOWN;

    /** Below this elevation of the sun drivers are dazzled and people beside the road fade (common practice, no source). */
    public static final double LOW_SUN_DEG = 10;

    private static final Duration STEP = Duration.ofMinutes(10);

    /** The worst light of a stay. */
    public static Light during(Place place, Window stay) {
        for (Instant at = stay.start(); at.isBefore(stay.end()); at = at.plus(STEP)) {
            if (Sun.elevationDeg(place, at) < LOW_SUN_DEG) {
                return POOR;
            }
        }
        return Sun.elevationDeg(place, stay.end()) < LOW_SUN_DEG ? POOR : DAY;
    }

    /** Must people dress for poor light? Also where nobody knows. */
    public boolean asksForMore() {
        return this != DAY;
    }
}
