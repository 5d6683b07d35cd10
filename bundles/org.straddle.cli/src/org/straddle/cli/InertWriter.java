package org.straddle.cli;

import java.io.IOException;
import java.io.Writer;
import java.util.Optional;

import org.straddle.model.InertText;

/**
 * The one way to standard output and standard error: nothing that acts ({@link InertText}) gets through but the end of a
 * line and the tab, whoever wrote it: names, messages of libraries, arguments. The formats of rows write such characters in
 * their own way before; here they would be shown as in a table.
 */
final class InertWriter extends Writer {

    private static final char NONE = 0;

    private final Writer out;
    private char high = NONE;
    private boolean afterReturn;
    private IOException failure;

    InertWriter(Writer out) {
        super(out);
        this.out = out;
    }

    @Override
    public void write(char[] characters, int from, int length) throws IOException {
        StringBuilder inert = new StringBuilder(length + 16);
        for (int i = from; i < from + length; i++) {
            take(characters[i], inert);
        }
        tell(() -> out.append(inert));
    }

    private void take(char character, StringBuilder inert) {
        if (high != NONE) {
            if (Character.isLowSurrogate(character)) {
                inert.append(high).append(character);
                high = NONE;
                return;
            }
            inert.append(InertText.code(high));
            high = NONE;
        }
        if (afterReturn) {
            // Alone it goes back to the beginning of the line, to write over it.
            inert.append(character == '\n' ? "\r" : InertText.code('\r'));
            afterReturn = false;
        }
        if (Character.isHighSurrogate(character)) {
            high = character;
        } else if (character == '\r') {
            afterReturn = true;
        } else if (character != '\n' && character != '\t' && InertText.acts(character)) {
            inert.append(InertText.code(character));
        } else {
            inert.append(character);
        }
    }

    @Override
    public void flush() throws IOException {
        tell(out::flush);
    }

    @Override
    public void close() throws IOException {
        flush();
    }

    /** Why something could not be written; empty when all was. A print writer keeps it to itself. */
    Optional<IOException> failure() {
        return Optional.ofNullable(failure);
    }

    private interface Step {
        void run() throws IOException;
    }

    private void tell(Step step) throws IOException {
        try {
            step.run();
        } catch (IOException e) {
            failure = failure == null ? e : failure;
            throw e;
        }
    }
}
