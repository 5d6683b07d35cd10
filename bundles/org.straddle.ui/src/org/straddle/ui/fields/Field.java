package org.straddle.ui.fields;

/** Something in a form that shows a part of the event and follows it. */
public interface Field {

    /** Shows what the event holds now. What the user is typing stays. */
    void refresh();

    /** Puts the cursor here. */
    default void focus() {
    }
}
