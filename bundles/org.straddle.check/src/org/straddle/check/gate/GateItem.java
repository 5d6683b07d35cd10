package org.straddle.check.gate;

import java.util.List;

import org.straddle.model.Identified;
import org.straddle.words.Catalogue;

/**
 * One item of a gate.
 *
 * @param sentence how it stands, or what is still open
 * @param settledBy who can settle it
 * @param things where somebody looks to settle it, the most pressing first: never empty
 */
public record GateItem(GateKind kind, State state, String sentence, String settledBy, List<Identified> things) {

    private static final Catalogue TEXTS = Catalogue.of(GateItem.class);

    public GateItem {
        things = List.copyOf(things);
    }

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

    /** Such as "open". */
    public String stateWord() {
        return TEXTS.text("gateState." + state.name());
    }

    public boolean isOpen() {
        return state == State.OPEN;
    }
}
