package org.straddle.ui.fields;

/** How a value is written in a text field. */
public interface Notation<T> {

    /** The value as the user would write it; the empty text for null. */
    String print(T value);

    /** @throws IllegalArgumentException with a sentence that says what is wrong and what to write */
    T parse(String text);

    /** How the value is understood, shown under the field; empty for nothing to say. */
    default String told(T value) {
        return "";
    }

    /** The same for somebody who wrote it so; the text has been read to the value. */
    default String told(String text, T value) {
        return told(value);
    }

    /** Whether the field keeps a line for {@link #told}. */
    default boolean tells() {
        return false;
    }
}
