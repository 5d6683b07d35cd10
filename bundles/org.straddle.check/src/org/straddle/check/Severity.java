package org.straddle.check;

import org.straddle.words.Catalogue;

/** How much a finding weighs, heaviest first. */
public enum Severity {
    /** The plan cannot work, or must not be published, as it stands. */
    BLOCKER("blocker"),
    /** Somebody has to look at it before the team leaves. */
    WARNING("warning"),
    /** Worth knowing; nothing has to be done. */
    ADVICE("advice");

    private static final Catalogue TEXTS = Catalogue.of(Severity.class);

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word in data, the same in every language. */
    public String word() {
        return word;
    }

    /** The word for people. */
    public String label() {
        return TEXTS.text(this);
    }
}
