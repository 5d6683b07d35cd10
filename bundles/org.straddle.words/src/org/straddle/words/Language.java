package org.straddle.words;

import java.util.Locale;

/**
 * The language that people read, and the locale of their figures and dates. It is chosen once, when Straddle starts, by
 * the system property {@value #PROPERTY}; without it English, whatever the computer's own locale is, because a figure
 * with a German comma in an English sentence can be misread. Files for programs never use it.
 *
 * @param tag    BCP 47 tag, also the ending of the files that hold its texts: {@code messages_de.properties}
 * @param locale of figures and dates for people
 * @param pseudo whether every text is bracketed, accented and lengthened, so that what is not in a catalogue, or has no
 *               room, shows on a screenshot
 */
public record Language(String tag, Locale locale, boolean pseudo) {

    /** System property with the tag of the language, or {@code pseudo}. */
    public static final String PROPERTY = "straddle.language";

    /** The language in which texts are written first; any other falls back on it. */
    public static final Language ENGLISH = new Language("en", Locale.ENGLISH, false);

    /** English made strange: {@code ⟦Ŝéárçh ~~⟧}. */
    public static final Language PSEUDO = new Language("en", Locale.ENGLISH, true);

    private static final Language CURRENT = of(System.getProperty(PROPERTY, "en"));

    /** The language chosen at the start. */
    public static Language current() {
        return CURRENT;
    }

    /** The language of a tag; {@link #PSEUDO} for {@code pseudo}, English for a blank tag. */
    public static Language of(String tag) {
        if (tag.equals("pseudo")) {
            return PSEUDO;
        }
        return tag.isBlank() || tag.equals("en") ? ENGLISH
                : new Language(tag, Locale.forLanguageTag(tag.replace('_', '-')), false);
    }

    boolean isEnglish() {
        return tag.equals("en");
    }
}
