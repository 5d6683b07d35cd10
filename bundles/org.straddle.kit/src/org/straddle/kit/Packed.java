package org.straddle.kit;

import java.time.Instant;
import java.util.Optional;

import org.straddle.model.InertText;
import org.straddle.model.Tick;
import org.straddle.model.Written;

/**
 * Somebody saw the item in the car.
 *
 * @param by a name, may be empty
 * @param at UTC, empty when it was not written down
 */
public record Packed(String by, Optional<Instant> at) {

    static Optional<Packed> of(Tick tick) {
        return Optional.ofNullable(tick)
                .map(there -> new Packed(InertText.line(Written.or(there.getBy(), "")), Optional.ofNullable(there.getAt())));
    }
}
