package org.straddle.publish;

import java.time.Instant;
import java.util.Objects;

/**
 * What only the publisher knows.
 *
 * @param revision counts the published states of the schedule, 1 and up
 * @param revisedAt UTC, when this state was published
 */
public record PublicationSettings(int revision, Instant revisedAt) {

    /** @throws IllegalArgumentException unless the revision counts from 1 */
    public PublicationSettings {
        if (revision < 1) {
            throw new IllegalArgumentException("Revisions count from 1, not " + revision + ".");
        }
        Objects.requireNonNull(revisedAt, "revisedAt");
    }
}
