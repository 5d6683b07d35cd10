package org.straddle.daysheet.edit;

/** A change that must not be made as things stand; the message says what, where, and what to do. */
public final class RefusedEdit extends Exception {

    private static final long serialVersionUID = 1L;

    RefusedEdit(String sentences) {
        super(sentences);
    }
}
