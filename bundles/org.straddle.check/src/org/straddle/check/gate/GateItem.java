package org.straddle.check.gate;

import org.straddle.words.Catalogue;

/**
 * One item of a gate.
 *
 * @param sentence how it stands, or what is still open
 * @param settledBy who can settle it
 */
public record GateItem(GateKind kind, State state, String sentence, String settledBy) {

    private static final Catalogue TEXTS = Catalogue.of(GateItem.class);

    /** How it stands. */
    public enum State {
        SETTLED,
        OPEN,
        /** Open, and somebody with a name took it on and said why. */
        OVERRIDDEN
    }

    /** The item with how it stands and, while it is open, who can settle it. */
    public String line() {
        return TEXTS.text(state == State.OPEN ? "item.open" : "item.other", "what", TEXTS.text(kind), "sentence", sentence, "by", settledBy);
    }

    /** Such as "reviews". */
    public String name() {
        return TEXTS.text(kind);
    }

    public boolean isOpen() {
        return state == State.OPEN;
    }
}
