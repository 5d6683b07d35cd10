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
import org.straddle.words.Catalogue;

/** What is said of a failure: one or two lines with what, where, and what to do. */
final class Complaint {

    private static final Catalogue TEXTS = Catalogue.of(Complaint.class);

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
            return TEXTS.text("complaint.cancelledNothingChanged");
        }
        if (failure instanceof FileSystemException file) {
            return file.getFile() + ": " + reason(file);
        }
        if (failure instanceof UncheckedIOException wrapped) {
            return of(wrapped.getCause());
        }
        if (failure instanceof IOException) {
            return TEXTS.text("complaint.readingWritingFailed", "reason", failure.getMessage() == null
                    ? TEXTS.text("complaint.nothingMoreKnown") : failure.getMessage());
        }
        if (failure instanceof OutOfMemoryError) {
            return TEXTS.text("complaint.memoryProgramMay");
        }
        return TEXTS.text("complaint.somethingFailedShould", "simpleName", failure.getClass().getSimpleName(),
                "reason", failure.getMessage());
    }

    /** A value that is quoted may have lines of its own. */
    private static String twoLines(String message, String whatToDo) {
        return message.endsWith("\n" + whatToDo)
                ? InertText.line(message.substring(0, message.length() - whatToDo.length() - 1)) + "\n" + InertText.line(whatToDo) : message;
    }

    private static String reason(FileSystemException failure) {
        if (failure instanceof NoSuchFileException) {
            return TEXTS.text("complaint.thereSuchFile");
        }
        if (failure instanceof AccessDeniedException) {
            return TEXTS.text("complaint.accessDeniedCheck");
        }
        if (failure instanceof FileAlreadyExistsException) {
            return TEXTS.text("complaint.existsAlreadyChoose");
        }
        return TEXTS.text("complaint.checkDiskPath", "reason", failure.getReason() == null
                ? TEXTS.text("complaint.cannotReadWritten") : failure.getReason());
    }
}
