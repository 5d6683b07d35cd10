package org.straddle.ui.workbench;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/**
 * Events that the system asks the program to open: on macOS a double click on {@code event.straddle} comes as a message,
 * perhaps before there is a window, and not as an argument.
 */
final class OpenDocuments {

    private static final String EVENT_FILE = "event.straddle";

    private Optional<Path> waiting = Optional.empty();
    private Consumer<Path> opener = path -> waiting = Optional.of(path);

    /** @param display before its first events are read */
    void hear(Display display) {
        display.addListener(SWT.OpenDocument, document -> asked(document.text));
    }

    /** The system asks for a document; what cannot be an event is left alone. */
    void asked(String document) {
        folder(document).ifPresent(opener);
    }

    /** From now on there is a window; opens what was asked for before. */
    void openWith(Consumer<Path> window) {
        opener = window;
        waiting.ifPresent(window);
        waiting = Optional.empty();
    }

    /** The event's folder: that of its file, or the document itself. */
    private static Optional<Path> folder(String document) {
        if (document == null) {
            return Optional.empty();
        }
        try {
            Path path = Path.of(document).toAbsolutePath();
            return path.endsWith(EVENT_FILE) ? Optional.of(path.getParent())
                    : Files.isRegularFile(path.resolve(EVENT_FILE)) ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException noPath) {
            return Optional.empty();
        }
    }
}
