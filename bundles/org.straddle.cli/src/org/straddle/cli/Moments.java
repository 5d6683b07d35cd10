package org.straddle.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;

/** Reads instants that a user typed: ISO 8601 with an offset, seconds or none. */
final class Moments {

    private Moments() {
    }

    /** @throws WrongInput naming the option when the text is no instant */
    static Instant instant(String option, String text) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException e) {
            throw new WrongInput(option + ": " + text + " is no instant.\nGive date, time and offset, such as"
                    + " 2031-06-21T10:30Z or 2031-06-21T12:30+02:00.");
        }
    }
}
