package org.straddle.kit.energy;

import java.time.Duration;

/**
 * A stretch of a day: a turn, or standing ready.
 *
 * @param turn what the turn is called, empty while the station stands ready
 */
public record Spell(String turn, Duration length) {

    public boolean isTurn() {
        return !turn.isEmpty();
    }
}
