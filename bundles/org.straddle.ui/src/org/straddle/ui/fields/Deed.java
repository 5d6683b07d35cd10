package org.straddle.ui.fields;

/**
 * What a button does.
 *
 * @param looks whether it only looks at things, so that it works in a locked form too
 */
public record Deed(String name, String explanation, Runnable action, boolean looks) {

    public static Deed of(String name, String explanation, Runnable action) {
        return new Deed(name, explanation, action, false);
    }

    public static Deed looking(String name, String explanation, Runnable action) {
        return new Deed(name, explanation, action, true);
    }
}
