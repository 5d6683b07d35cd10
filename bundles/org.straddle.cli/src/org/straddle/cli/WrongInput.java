package org.straddle.cli;

/** The user gave something that cannot be worked with; the message says what, where, and what to do. */
final class WrongInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    WrongInput(String message) {
        super(message);
    }
}
