package org.straddle.ui.work;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Tells the user what went wrong and what to do; details for experts go to the log. */
public final class Problem {

    private Problem() {
    }

    /** @param sentence what, where, and what to do */
    public static void show(Shell shell, String sentence, Throwable details) {
        log(sentence, details);
        MessageDialog.openError(shell, "Straddle", sentence);
    }

    /** For what the user need not be told. */
    public static void log(String sentence, Throwable details) {
        ILog.of(Problem.class).log(Status.error(sentence, details));
    }
}
