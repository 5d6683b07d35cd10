package org.straddle.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;

import org.straddle.words.Catalogue;

/** Reads instants that a user typed: ISO 8601 with an offset, seconds or none. */
final class Moments {

    private static final Catalogue TEXTS = Catalogue.of(Moments.class);

    private Moments() {
    }

    /** @throws WrongInput naming the option when the text is no instant */
    static Instant instant(String option, String text) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException e) {
            throw new WrongInput(TEXTS.text("moments.instantGiveDate", "option", option, "text", text));
        }
    }
}
