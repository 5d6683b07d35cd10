package org.straddle.model;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text that somebody else wrote, so that it can only be read: no character of it moves a cursor, colours a terminal, ends
 * a line, or turns the order of what is shown around.
 *
 * <p>A character that acts is written as {@code \\u} and four hexadecimal digits, so nothing is lost. These act: the
 * control codes C0 and C1 with DEL (ISO/IEC 6429; ESC, CSI at U+009B and OSC at U+009D begin commands to a terminal),
 * the separators of lines and paragraphs, the embeddings, overrides and isolates of writing direction (Unicode
 * Standard Annex 9, the characters that Unicode Technical Standard 55 warns of), and halves of surrogate pairs that
 * stand alone. Marks of direction (U+200E, U+200F, U+061C) stay: names in Arabic and Hebrew need them.
 */
public final class InertText {

    private static final int FIFTH_DIGIT = 0x10000;
    private static final char BACKSLASH = '\\';

    /** Lower case as {@link #code} writes: somebody's own notation is mostly another. */
    private static final Pattern CODE = Pattern.compile("\\\\u([0-9a-f]{4})");

    private InertText() {
    }

    /** Whether a code point does more than to be shown; a surrogate stands for one that is alone. */
    public static boolean acts(int character) {
        return character < ' ' || character >= 0x7F && character <= 0x9F || character == 0x2028 || character == 0x2029
                || character >= 0x202A && character <= 0x202E || character >= 0x2066 && character <= 0x2069
                || character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
    }

    /** For one line that people read: ends of lines and tabs become blanks, whatever else acts is written out. */
    public static String line(String text) {
        return isPlain(text) ? text : written(text.replaceAll("\\R|\\t", " "), "");
    }

    /** For text of several lines: line feeds and tabs stay, whatever else acts is written out. */
    public static String lines(String text) {
        return isPlain(text) ? text : written(text.replace("\r\n", "\n"), "\n\t");
    }

    private static String written(String text, String but) {
        StringBuilder inert = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(character -> {
            if (acts(character) && but.indexOf(character) < 0) {
                inert.append(code(character));
            } else {
                inert.appendCodePoint(character);
            }
        });
        return inert.toString();
    }

    /**
     * For files that are read again by {@link #restored}: characters that act are written out, and so is a backslash that
     * would make something else look like one of them.
     *
     * @param but characters that stay as they are
     */
    public static String reversible(String text, String but) {
        String unlike = text.indexOf(BACKSLASH) < 0 ? text : text.replace("\\u", code(BACKSLASH) + "u");
        return isPlain(unlike) ? unlike : written(unlike, but);
    }

    /** What {@link #reversible} was given; of a text that somebody else wrote, with the characters that it writes out. */
    public static String restored(String text) {
        return text.indexOf(BACKSLASH) < 0 ? text : CODE.matcher(text).replaceAll(match -> Matcher.quoteReplacement(
                String.valueOf((char) Integer.parseInt(match.group(1), 16))));
    }

    /** A character of the first plane as it is written out. */
    public static String code(int character) {
        return "\\u" + Integer.toHexString(FIFTH_DIGIT | character).substring(1);
    }

    /** Index of the first character that no event can store, because XML 1.0 (section 2.2) cannot carry it; -1 when there is none. */
    public static int firstNotStorable(String text) {
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int c = text.codePointAt(i);
            boolean storable = c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF
                    || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
            if (!storable) {
                return i;
            }
        }
        return -1;
    }

    /** Whether nothing of the text acts. */
    public static boolean isPlain(String text) {
        return text.codePoints().noneMatch(InertText::acts);
    }
}
