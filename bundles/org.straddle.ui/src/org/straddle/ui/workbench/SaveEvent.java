package org.straddle.ui.workbench;

import java.nio.file.Path;

import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.session.EventSession;

/** Writes the event of the window to disk. */
public final class SaveEvent {

    private SaveEvent() {
    }

    /** An event that was opened only to read it asks for another folder. */
    public static boolean save(Shell shell) {
        EventSession session = EventSession.current();
        if (session.folder().isReadOnly()) {
            return EventDialogs.saveAs(shell);
        }
        session.commitPendingEdits();
        if (!RefusedText.ask(shell)) {
            return false;
        }
        boolean done = FileWork.run(shell, "Saving " + session.folder().path().getFileName(), session::write);
        if (done) {
            session.saved();
        }
        return done;
    }

    /** Writes to another folder and goes on working there. */
    public static boolean saveAs(Shell shell, Path path) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        if (!RefusedText.ask(shell)) {
            return false;
        }
        boolean done = FileWork.run(shell, "Saving " + path.getFileName(), () -> session.writeAs(path));
        if (done) {
            session.saved();
            RecentEvents.add(path);
        }
        return done;
    }
}
