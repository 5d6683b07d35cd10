package org.straddle.sky;

/** An element set that cannot be read or used; the message says why, in words for the user. */
public class ElementSetException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public ElementSetException(String message) {
        super(message);
    }

    public ElementSetException(String message, Throwable cause) {
        super(message, cause);
    }
}
