package org.straddle.ui.fields;

/** Plain text; blank text is stored as none. */
public final class Words implements Notation<String> {

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

    /** One line that must not be empty. */
    public static Words required(String what) {
        return new Words(200, what);
    }

    @Override
    public String print(String value) {
        return value == null ? "" : value;
    }

    @Override
    public String parse(String text) {
        if (text.length() > longest) {
            throw new IllegalArgumentException("This is longer than " + longest + " characters: shorten it.");
        }
        if (text.isBlank()) {
            if (required != null) {
                throw new IllegalArgumentException("Enter " + required + ".");
            }
            return null;
        }
        return text;
    }
}
