package org.straddle.ui.work;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.straddle.exchange.ReadException;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

/**
 * Reads or writes files on another thread while the window waits. The work must not touch the live event: the window
 * answers the user again after a moment.
 */
public final class FileWork {

    private static final Catalogue TEXTS = Catalogue.of(FileWork.class);

    private FileWork() {
    }

    /** Work that may fail in ways the user is told about. */
    public interface Work {
        void run() throws Exception;
    }

    /** True if the work was done; a failure has been told to the user. */
    public static boolean run(Shell shell, String task, Work work) {
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
                monitor.beginTask(task, -1);
                try {
                    work.run();
                } catch (Exception failure) {
                    throw new InvocationTargetException(failure);
                } finally {
                    monitor.done();
                }
            });
            return true;
        } catch (InvocationTargetException failure) {
            Problem.show(shell, sentence(task, failure.getCause()), failure.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return false;
    }

    static String sentence(String task, Throwable failure) {
        if (failure instanceof EventFolderException || failure instanceof ReadException) {
            return failure.getMessage();
        }
        return TEXTS.text("fileWork.failed", "task", task, "reason", reason(failure));
    }

    /** Failures of the file system often say nothing but the name of the file. */
    private static String reason(Throwable failure) {
        if (failure instanceof NoSuchFileException missing) {
            return TEXTS.text("fileWork.missing", "file", missing.getFile());
        }
        if (failure instanceof AccessDeniedException denied) {
            return TEXTS.text("fileWork.denied", "file", denied.getFile());
        }
        if (failure instanceof FileSystemException wrong) {
            return TEXTS.text("fileWork.wrong", "file", wrong.getFile(),
                    "reason", wrong.getReason() == null ? wrong.getClass().getSimpleName() : wrong.getReason());
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }
}
