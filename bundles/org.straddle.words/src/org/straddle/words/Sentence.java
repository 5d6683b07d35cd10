package org.straddle.words;

import java.util.Locale;

/** The beginning of a sentence or a heading. */
public final class Sentence {

    private Sentence() {
    }

    /** With a capital first letter, in the language chosen at the start. */
    public static String begun(String text) {
        return begun(text, Language.current().locale());
    }

    /** The same as a language writes it: Turkish has a capital dotted i. */
    public static String begun(String text, Locale locale) {
        int first = text.isEmpty() ? 0 : text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(locale) + text.substring(first);
    }
}
