package org.straddle.kit.energy;

import java.time.Duration;
import java.time.Instant;

/**
 * A stretch of a day: a turn, or standing ready.
 *
 * @param turn  what the turn is called, empty while the station stands ready
 * @param start when it begins by the plan; null where no clock is asked for
 */
public record Spell(String turn, Duration length, Instant start) {

    /** One without a clock. */
    public Spell(String turn, Duration length) {
        this(turn, length, null);
    }

    public boolean isTurn() {
        return !turn.isEmpty();
    }
}
