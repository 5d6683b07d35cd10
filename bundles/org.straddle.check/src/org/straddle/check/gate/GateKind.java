package org.straddle.check.gate;

import java.util.Arrays;
import java.util.Optional;

/** What must be settled before a team leaves. The word is what a person's entry in the event names it by. */
public enum GateKind {
    REVIEW("review", false),
    VISIT("visit", false),
    PERMISSION("permission", false),
    HAZARDS("hazards", false),
    BLOCKERS("blockers", false),
    CREW("crew", false),
    PACKED("packed", false),
    ENERGY("energy", false),
    TESTED("tested", true),
    DOCUMENTS("documents", true),
    WEATHER("weather", true),
    CHECK_IN("check-in", true),
    BRIEFED("briefed", true);

    private final String word;
    private final boolean byWord;

    GateKind(String word, boolean byWord) {
        this.word = word;
        this.byWord = byWord;
    }

    /** Such as "check-in". */
    public String word() {
        return word;
    }

    /** Does somebody's word settle it? The others follow from the event, and a word can only override them. */
    public boolean byWord() {
        return byWord;
    }

    public static Optional<GateKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
