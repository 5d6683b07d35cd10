package org.straddle.ui.folder;

import java.nio.file.Path;

import org.eclipse.swt.widgets.Shell;
import org.straddle.store.EventFolderException;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SaveRun;
import org.straddle.ui.work.FileWork;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Writes the event of the window to disk. */
public final class SaveEvent {

    private static final Catalogue TEXTS = Catalogue.of(SaveEvent.class);

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
        return written(shell, session.folder().path(), session::beginSave);
    }

    /** Writes to another folder and goes on working there. */
    public static boolean saveAs(Shell shell, Path path) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        if (!RefusedText.ask(shell)) {
            return false;
        }
        boolean done = written(shell, path, () -> session.beginSaveAs(path));
        if (done) {
            RecentEvents.add(path);
        }
        return done;
    }

    private interface Beginning {
        SaveRun begin() throws EventFolderException;
    }

    /** True if all was written; edits that were made meanwhile stay unsaved. */
    private static boolean written(Shell shell, Path path, Beginning beginning) {
        SaveRun run;
        try {
            run = beginning.begin();
        } catch (EventFolderException refused) {
            Problem.show(shell, refused.getMessage(), refused);
            return false;
        }
        boolean done = FileWork.run(shell, TEXTS.text("saveEvent.saving", "folder", path.getFileName()), run::write);
        if (done) {
            EventSession.current().saved(run);
        }
        return done;
    }
}
