package org.straddle.terrain;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/** An elevation raster cannot be used. The message says what is wrong and what to do, and is fit to be shown. */
public final class TerrainException extends IOException {

    private static final long serialVersionUID = 1L;

    private final String what;
    private final String whatToDo;

    TerrainException(Path file, String what, String whatToDo) {
        this(file, what, whatToDo, null);
    }

    TerrainException(Path file, String what, String whatToDo, Throwable cause) {
        super((file == null ? "" : name(file) + ": ") + what + "\n" + whatToDo, cause);
        this.what = Objects.requireNonNull(what);
        this.whatToDo = Objects.requireNonNull(whatToDo);
    }

    public String what() {
        return what;
    }

    public String whatToDo() {
        return whatToDo;
    }

    private static String name(Path file) {
        return file.getFileName() == null ? file.toString() : file.getFileName().toString();
    }
}
