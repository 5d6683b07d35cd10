package org.straddle.publish;

import java.time.Instant;
import java.util.Objects;

import org.straddle.words.Catalogue;

/**
 * What only the publisher knows.
 *
 * @param revision counts the published states of the schedule, 1 and up
 * @param revisedAt UTC, when this state was published
 */
public record PublicationSettings(int revision, Instant revisedAt) {

    private static final Catalogue TEXTS = Catalogue.of(PublicationSettings.class);

    /** @throws IllegalArgumentException unless the revision counts from 1 */
    public PublicationSettings {
        if (revision < 1) {
            throw new IllegalArgumentException(TEXTS.text("publicationSettings.revisionsCountFrom", "revision", revision));
        }
        Objects.requireNonNull(revisedAt, "revisedAt");
    }
}
