package org.straddle.safety;

import java.util.Locale;

/** How this bundle words texts and figures that may be missing in a file. */
final class Words {

    private Words() {
    }

    static String orElse(String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : text.strip();
    }

    /** One decimal at most, with a point. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
