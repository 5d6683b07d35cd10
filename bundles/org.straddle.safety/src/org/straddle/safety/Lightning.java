package org.straddle.safety;

import java.time.Duration;
import java.time.Instant;

/**
 * The 30-30 rule of the US National Weather Service: go for shelter when thunder follows a flash within 30 seconds,
 * and stay there for at least 30 minutes after the last thunder. A tent, a mast or an open car is no shelter.
 */
public final class Lightning {

    /** Thunder within this after the flash sends everybody to shelter (NOAA/NWS guidance). */
    public static final Duration SHELTER_WITHIN = Duration.ofSeconds(30);

    /** At least this long after the last thunder (NOAA/NWS guidance). */
    public static final Duration WAIT = Duration.ofMinutes(30);

    /** Sound takes about 5 s for a mile (NOAA/NWS guidance). */
    private static final double SECONDS_PER_MILE = 5;

    private static final double KM_PER_MILE = 1.609344;

    private Lightning() {
    }

    /** Must everybody go for shelter now? */
    public static boolean shelterNow(Duration flashToThunder) {
        return flashToThunder.compareTo(SHELTER_WITHIN) <= 0;
    }

    /** Nobody goes back out before this. */
    public static Instant notBefore(Instant lastThunder) {
        return lastThunder.plus(WAIT);
    }

    /** About how far away the flash was, km. */
    public static double distanceKm(Duration flashToThunder) {
        return flashToThunder.toMillis() / 1000.0 / SECONDS_PER_MILE * KM_PER_MILE;
    }
}
