package org.straddle.model;

/** Text that somebody may have left out. */
public final class Written {

    private Written() {
    }

    /** Is there nothing to read? */
    public static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }

    /** Without blanks around it; where nothing was written, the other text, which may be null. */
    public static String or(String text, String otherwise) {
        return isBlank(text) ? otherwise : text.strip();
    }
}
