package org.straddle.store;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** A file name made from a name that people gave: lower-case ASCII letters, digits and single hyphens. */
final class Slug {

    /** Room for a content hash, short enough for every file system and archive. */
    private static final int LONGEST = 64;
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
    /** Names that one widespread family of systems keeps for devices, with any extension. */
    private static final Pattern DEVICES = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");
    /** Letters that do not come apart into a base letter and a mark. */
    private static final Map<String, String> LETTERS = Map.ofEntries(Map.entry("ð", "d"), Map.entry("þ", "th"),
            Map.entry("æ", "ae"), Map.entry("œ", "oe"), Map.entry("ø", "o"), Map.entry("ß", "ss"),
            Map.entry("ł", "l"), Map.entry("đ", "d"), Map.entry("ħ", "h"), Map.entry("ı", "i"));

    private Slug() {
    }

    /** @param otherwise slug for a name of which nothing remains, such as one in another script */
    static String of(String name, String otherwise) {
        String text = name == null ? "" : name.toLowerCase(Locale.ROOT);
        for (Map.Entry<String, String> letter : LETTERS.entrySet()) {
            text = text.replace(letter.getKey(), letter.getValue());
        }
        text = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        text = trimmed(OTHERS.matcher(text).replaceAll("-"));
        if (text.length() > LONGEST) {
            text = trimmed(text.substring(0, LONGEST));
        }
        if (text.isEmpty()) {
            return otherwise;
        }
        return DEVICES.matcher(text).matches() ? text + "-" + otherwise : text;
    }

    /** The slug itself, or the first of slug-2, slug-3, … that is free. */
    static String unique(String slug, Predicate<String> taken) {
        String candidate = slug;
        for (int i = 2; taken.test(candidate); i++) {
            candidate = slug + "-" + i;
        }
        return candidate;
    }

    private static String trimmed(String text) {
        return text.replaceAll("^-+|-+$", "");
    }
}
