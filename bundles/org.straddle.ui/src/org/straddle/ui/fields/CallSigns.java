package org.straddle.ui.fields;

import java.util.Locale;

/** A call sign, which is in capitals however it is typed. */
public final class CallSigns implements Notation<String> {

    private final Notation<String> words;

    private CallSigns(Notation<String> words) {
        this.words = words;
    }

    /** It must not be empty; if it is, the sentence given here says what to enter. */
    public static CallSigns required(String otherwise) {
        return new CallSigns(Words.required(otherwise));
    }

    @Override
    public String print(String value) {
        return words.print(value);
    }

    @Override
    public String parse(String text) {
        return words.parse(text.strip().toUpperCase(Locale.ROOT));
    }
}
