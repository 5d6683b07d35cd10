package org.straddle.ui.workbench;

import java.lang.reflect.InvocationTargetException;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.straddle.exchange.ReadException;
import org.straddle.store.EventFolderException;

/**
 * Reads or writes files on another thread while the window waits. The window is blocked on purpose: the event must
 * not change while it is being written.
 */
public final class FileWork {

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

    private static String sentence(String task, Throwable failure) {
        if (failure instanceof EventFolderException || failure instanceof ReadException) {
            return failure.getMessage();
        }
        return task + " failed: " + (failure.getMessage() == null ? failure.getClass().getSimpleName()
                : failure.getMessage()) + "\n\nCheck that the folder exists and may be read and written, then try"
                + " again.";
    }
}
