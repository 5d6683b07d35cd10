package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.eclipse.swt.widgets.Shell;
import org.straddle.store.EventFolder;
import org.straddle.ui.session.EventSession;

/** Reads an event folder in the background and makes it the event of the window. */
public final class OpenEvent {

    private OpenEvent() {
    }

    /** Opens the event, after asking what becomes of the present one; false if it was not opened. */
    public static boolean open(Shell shell, Path path) {
        return open(shell, "Opening " + path.getFileName(), () -> EventFolder.open(path));
    }

    /** Opens what the given work makes or reads off the UI thread. */
    public static boolean open(Shell shell, String task, Callable<EventFolder> work) {
        if (!LeaveEvent.ask()) {
            return false;
        }
        EventFolder[] opened = new EventFolder[1];
        boolean done = FileWork.run(shell, task, () -> opened[0] = work.call());
        if (done) {
            EventSession.current().open(opened[0]);
            RecentEvents.add(opened[0].path());
        }
        return done;
    }
}
