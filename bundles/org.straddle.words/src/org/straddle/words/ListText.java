package org.straddle.words;

import java.util.Collection;
import java.util.List;

/** Lists within a sentence. */
public final class ListText {

    private final Language language;

    private ListText(Language language) {
        this.language = language;
    }

    public static ListText in(Language language) {
        return new ListText(language);
    }

    /** {@code A, B and C}, in the language chosen at the start. */
    public static String all(Collection<?> things) {
        return in(Language.current()).and(things);
    }

    /** {@code A, B or C}, in the language chosen at the start. */
    public static String any(Collection<?> things) {
        return in(Language.current()).or(things);
    }

    /** {@code A, B and C}. */
    public String and(Collection<?> things) {
        return joined(things, "and");
    }

    /** {@code A, B or C}. */
    public String or(Collection<?> things) {
        return joined(things, "or");
    }

    private String joined(Collection<?> things, String by) {
        List<String> words = things.stream().map(thing -> Message.say(thing, language)).toList();
        if (words.size() < 2) {
            return String.join("", words);
        }
        return Catalogue.of(ListText.class).in(language).text("list." + by, "first",
                String.join(", ", words.subList(0, words.size() - 1)), "last", words.get(words.size() - 1));
    }
}
