package org.straddle.exchange;

import org.straddle.model.InertText;

/**
 * Text in a cell of CSV, so that a spreadsheet takes it for text and a terminal shows it, and so that {@link #read}
 * gives it back unchanged.
 *
 * <p>A spreadsheet takes what begins with {@code = + - @} for a formula (OWASP, "CSV Injection"): an apostrophe before it
 * says that it is text. Characters that act ({@link InertText}) are written out, line feeds and tabs within the text
 * excepted, and so are blanks at either end, which readers of CSV drop. A text that looks as if it were protected already
 * is protected once more.
 */
public final class CsvCell {

    /** The last four are the wide forms, which spreadsheets in East Asia take for the same. */
    private static final String BEGIN_FORMULAS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";
    private static final char TEXT = '\'';

    private CsvCell() {
    }

    /** A text as it goes into a cell; the quotes of RFC 4180 come later. */
    public static String of(String text) {
        String inert = InertText.reversible(text, "\n\t");
        int end = inert.length();
        while (end > 0 && isBlank(inert.charAt(end - 1))) {
            end--;
        }
        int start = 0;
        while (start < end && isBlank(inert.charAt(start))) {
            start++;
        }
        String cell = codes(inert.substring(0, start)) + inert.substring(start, end) + codes(inert.substring(end));
        return !cell.isEmpty() && (cell.charAt(0) == TEXT || BEGIN_FORMULAS.indexOf(cell.charAt(0)) >= 0) ? TEXT + cell : cell;
    }

    /** The text of a cell, whoever wrote it. */
    public static String read(String cell) {
        boolean isProtected = cell.length() > 1 && cell.charAt(0) == TEXT
                && (cell.charAt(1) == TEXT || BEGIN_FORMULAS.indexOf(cell.charAt(1)) >= 0);
        return InertText.restored(isProtected ? cell.substring(1) : cell);
    }

    /** What a reader of CSV may drop at the ends of a cell. */
    private static boolean isBlank(char character) {
        return character <= ' ' || Character.isWhitespace(character) || Character.isSpaceChar(character);
    }

    private static String codes(String blanks) {
        StringBuilder codes = new StringBuilder();
        for (char blank : blanks.toCharArray()) {
            codes.append(InertText.code(blank));
        }
        return codes.toString();
    }
}
