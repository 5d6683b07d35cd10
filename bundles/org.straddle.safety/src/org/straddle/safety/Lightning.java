package org.straddle.safety;

import java.time.Duration;
import java.time.Instant;

/**
 * Any thunder that somebody hears sends everybody to shelter: who hears it is near enough to be struck (US National
 * Weather Service, "When thunder roars, go indoors"). The older advice to count the seconds between flash and thunder
 * first is superseded. A tent, a mast or an open car is no shelter, and nobody takes a mast down any more.
 */
public final class Lightning {

    /** At least this long after the last thunder (US National Weather Service). */
    public static final Duration WAIT = Duration.ofMinutes(30);

    private Lightning() {
    }

    /** Nobody goes back out before this. */
    public static Instant notBefore(Instant lastThunder) {
        return lastThunder.plus(WAIT);
    }
}
