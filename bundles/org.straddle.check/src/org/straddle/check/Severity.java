package org.straddle.check;

/** How much a finding weighs, heaviest first. */
public enum Severity {
    /** The plan cannot work, or must not be published, as it stands. */
    BLOCKER("blocker"),
    /** Somebody has to look at it before the team leaves. */
    WARNING("warning"),
    /** Worth knowing; nothing has to be done. */
    ADVICE("advice");

    private final String label;

    Severity(String label) {
        this.label = label;
    }

    /** The word to print. */
    public String label() {
        return label;
    }
}
