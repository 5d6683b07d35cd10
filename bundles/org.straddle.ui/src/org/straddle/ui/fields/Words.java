package org.straddle.ui.fields;

import org.straddle.words.Catalogue;

/** Plain text; blank text is stored as none. */
public final class Words implements Notation<String> {

    private static final Catalogue TEXTS = Catalogue.of(Words.class);

    private final int longest;
    private final String required;

    private Words(int longest, String required) {
        this.longest = longest;
        this.required = required;
    }

    /** Any text of at most 20 000 characters. */
    public static Words any() {
        return new Words(20_000, null);
    }

    /** One line that must not be empty; if it is, the sentence given here says what to enter. */
    public static Words required(String otherwise) {
        return new Words(200, otherwise);
    }

    @Override
    public String print(String value) {
        return value == null ? "" : value;
    }

    @Override
    public String parse(String text) {
        if (text.length() > longest) {
            throw new IllegalArgumentException(TEXTS.text("words.long", "most", longest));
        }
        if (text.isBlank()) {
            if (required != null) {
                throw new IllegalArgumentException(required);
            }
            return null;
        }
        return text;
    }
}
