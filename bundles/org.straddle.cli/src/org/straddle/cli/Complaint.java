package org.straddle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

import org.eclipse.core.runtime.OperationCanceledException;
import org.straddle.exchange.ReadException;
import org.straddle.model.InertText;
import org.straddle.publish.PublishException;
import org.straddle.store.EventFolderException;
import org.straddle.terrain.TerrainException;

/** What is said of a failure: one or two lines with what, where, and what to do. */
final class Complaint {

    private Complaint() {
    }

    static String of(Throwable failure) {
        if (failure instanceof EventFolderException event) {
            return twoLines(event.getMessage(), event.whatToDo());
        }
        if (failure instanceof ReadException read) {
            return twoLines(read.getMessage(), read.whatToDo());
        }
        if (failure instanceof PublishException || failure instanceof WrongInput || failure instanceof TerrainException) {
            return failure.getMessage();
        }
        if (failure instanceof OperationCanceledException) {
            return "Cancelled; nothing was changed.";
        }
        if (failure instanceof FileSystemException file) {
            return file.getFile() + ": " + reason(file);
        }
        if (failure instanceof UncheckedIOException wrapped) {
            return of(wrapped.getCause());
        }
        if (failure instanceof IOException) {
            return "Reading or writing failed: " + (failure.getMessage() == null ? "nothing more is known" : failure.getMessage())
                    + ".\nCheck the disk: is it full, or gone? Then run the command again.";
        }
        if (failure instanceof OutOfMemoryError) {
            return "The memory that the program may use is full.\nGive a smaller event or file, or choose less of it by options.";
        }
        return "Something failed that should not (" + failure.getClass().getSimpleName() + ": " + failure.getMessage()
                + ").\nNothing more is known; run it again with --trace and report what it prints.";
    }

    /** A value that is quoted may have lines of its own. */
    private static String twoLines(String message, String whatToDo) {
        return message.endsWith("\n" + whatToDo)
                ? InertText.line(message.substring(0, message.length() - whatToDo.length() - 1)) + "\n" + InertText.line(whatToDo) : message;
    }

    private static String reason(FileSystemException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file or folder. Check the path.";
        }
        if (failure instanceof AccessDeniedException) {
            return "access denied. Check the permissions of the file and its folder.";
        }
        if (failure instanceof FileAlreadyExistsException) {
            return "it exists already. Choose another place.";
        }
        return (failure.getReason() == null ? "it cannot be read or written" : failure.getReason())
                + ". Check the disk and the path.";
    }
}
