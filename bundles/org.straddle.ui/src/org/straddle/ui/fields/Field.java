package org.straddle.ui.fields;

import java.util.Optional;

/** Something in a form that shows a part of the event and follows it. */
public interface Field {

    /** Shows what the event holds now. What the user is typing stays. */
    void refresh();

    /** What was typed here and cannot be read, with the name of the field; it is nowhere but in the form. */
    default Optional<String> unread() {
        return Optional.empty();
    }

    /** Puts the cursor here. */
    default void focus() {
    }
}
