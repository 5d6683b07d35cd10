package org.straddle.exchange;

import java.io.IOException;
import java.util.Objects;

import org.straddle.words.Catalogue;

/**
 * A file from elsewhere cannot be read, and nothing of it was taken. The message says on one line what is wrong and
 * where, and on a second what to do; it is fit to be shown to the user as it is.
 */
public final class ReadException extends IOException {

    private static final Catalogue TEXTS = Catalogue.of(ReadException.class);

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final String what;
    private final String whatToDo;

    /** @param line from 1; 0 when no line is to blame */
    public ReadException(String file, int line, String what, String whatToDo) {
        this(file, line, what, whatToDo, null);
    }

    public ReadException(String file, int line, String what, String whatToDo, Throwable cause) {
        super(file + (line > 0 ? TEXTS.text("readException.line",
                "line", line) : "") + ": " + what + "\n" + whatToDo, cause);
        this.file = Objects.requireNonNull(file);
        this.line = line;
        this.what = Objects.requireNonNull(what);
        this.whatToDo = Objects.requireNonNull(whatToDo);
    }

    public String file() {
        return file;
    }

    /** From 1; 0 when no line is to blame. */
    public int line() {
        return line;
    }

    /** What is wrong, a sentence without its place. */
    public String what() {
        return what;
    }

    public String whatToDo() {
        return whatToDo;
    }
}
