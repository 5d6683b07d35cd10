package org.straddle.publish;

import java.io.IOException;

import org.straddle.words.Catalogue;

/** A publication failed. The message says in one line what exists now and why, and in a second what to do. */
public final class PublishException extends IOException {

    private static final Catalogue TEXTS = Catalogue.of(PublishException.class);

    private static final long serialVersionUID = 1L;

    PublishException(String what, String whatToDo, Throwable cause) {
        super(what + "\n" + whatToDo, cause);
    }

    /** The event could not be saved with the note of the revision, so no sheet was put in place. */
    public static PublishException notNoted(IOException cause) {
        return new PublishException(TEXTS.text("publishException.nothingPublishedBecause",
                "findFirst", cause.getMessage().lines().findFirst().orElse("")), cause.getMessage().lines().skip(1).findFirst()
                .orElse(TEXTS.text("publishException.checkDiskYour")), cause);
    }
}
