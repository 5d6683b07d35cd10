package org.straddle.store;

import java.io.IOException;
import java.util.Objects;

import org.straddle.words.Catalogue;

/**
 * An event folder could not be opened or saved. The message says on one line what is wrong and where, and on a
 * second what to do; it is fit to be shown to the user as it is.
 */
public final class EventFolderException extends IOException {

    private static final Catalogue TEXTS = Catalogue.of(EventFolderException.class);

    private static final long serialVersionUID = 1L;

    private final String what;
    private final String file;
    private final int line;
    private final int column;
    private final String whatToDo;

    /**
     * @param file   name of the file as the user knows it, relative to the event folder where it lies in it
     * @param line   from 1; 0 when no line is to blame
     * @param column from 1; 0 when unknown
     */
    public EventFolderException(String what, String file, int line, int column, String whatToDo) {
        this(what, file, line, column, whatToDo, null);
    }

    EventFolderException(String what, String file, int line, int column, String whatToDo, Throwable cause) {
        super(place(file, line, column) + ": " + what + "\n" + whatToDo, cause);
        this.what = Objects.requireNonNull(what);
        this.file = file;
        this.line = line;
        this.column = column;
        this.whatToDo = Objects.requireNonNull(whatToDo);
    }

    static EventFolderException of(String what, Object file, String whatToDo) {
        return new EventFolderException(what, file.toString(), 0, 0, whatToDo);
    }

    static EventFolderException causedBy(Exception cause, String what, Object file, String whatToDo) {
        return new EventFolderException(what, file.toString(), 0, 0, whatToDo, cause);
    }

    private static String place(String file, int line, int column) {
        return file + (line > 0 ? TEXTS.text("eventFolderException.line", "line", line, "column", column > 0
                ? TEXTS.text("eventFolderException.column", "column", column) : "") : "");
    }

    /** What is wrong, a sentence without its place. */
    public String what() {
        return what;
    }

    public String file() {
        return file;
    }

    /** From 1; 0 when no line is to blame. */
    public int line() {
        return line;
    }

    /** From 1; 0 when unknown. */
    public int column() {
        return column;
    }

    public String whatToDo() {
        return whatToDo;
    }
}
