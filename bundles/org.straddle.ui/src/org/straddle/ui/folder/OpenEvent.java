package org.straddle.ui.folder;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.store.UnsavedEdits;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Reads an event folder in the background and makes it the event of the window. */
public final class OpenEvent {

    private static final Catalogue TEXTS = Catalogue.of(OpenEvent.class);

    private OpenEvent() {
    }

    /**
     * Opens the event, after asking what becomes of the present one; false if it was not opened. An event that somebody
     * else edits, or that may not be written, is offered for reading.
     */
    public static boolean open(Shell shell, Path path) {
        if (!LeaveEvent.ask()) {
            return false;
        }
        EventSession session = EventSession.current();
        if (session.isOpen() && session.folder().path().equals(path.toAbsolutePath().normalize())) {
            // Read anew what is on disk: the window itself holds the folder.
            session.close();
        }
        Attempt attempt = new Attempt(path);
        if (!FileWork.run(shell, TEXTS.text("openEvent.opening", "folder", path.getFileName()), attempt::read)) {
            return false;
        }
        if (attempt.refusal != null) {
            return readingIsEnough(shell, attempt) && show(attempt.folder);
        }
        if (attempt.unsaved.isPresent() && UnsavedQuestion.ask(shell, attempt.unsaved.get())) {
            attempt.folder.close();
            return FileWork.run(shell, TEXTS.text("openEvent.edits"), attempt::readUnsaved) && show(attempt.folder) && broughtBack();
        }
        return show(attempt.folder);
    }

    /** Opens what the given work makes or reads off the UI thread. */
    public static boolean open(Shell shell, String task, Callable<EventFolder> work) {
        EventFolder[] opened = new EventFolder[1];
        return LeaveEvent.ask() && FileWork.run(shell, task, () -> opened[0] = work.call()) && show(opened[0]);
    }

    private static boolean broughtBack() {
        EventSession.current().broughtBack();
        return true;
    }

    private static boolean show(EventFolder opened) {
        EventSession.current().open(opened);
        RecentEvents.add(opened.path());
        opened.migration().ifPresent(migration -> MessageDialog.openInformation(Display.getCurrent().getActiveShell(),
                TEXTS.text("openEvent.older"), migration.sentence()));
        return true;
    }

    private static boolean readingIsEnough(Shell shell, Attempt attempt) {
        return MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("eventDialogs.open"),
                TEXTS.text("openEvent.refused", "refusal", attempt.refusal.getMessage()), SWT.NONE, TEXTS.text("openEvent.read"),
                TEXTS.text("openEvent.cancel")) == 0;
    }

    /** The event to edit; else to read, with the reason why it cannot be edited. */
    private static final class Attempt {

        private final Path path;
        private EventFolder folder;
        private EventFolderException refusal;
        private Optional<UnsavedEdits.Found> unsaved = Optional.empty();

        Attempt(Path path) {
            this.path = path;
        }

        void read() throws EventFolderException {
            try {
                folder = EventFolder.open(path);
                unsaved = UnsavedEdits.of(path).find();
            } catch (EventFolderException refused) {
                folder = readOnly(refused);
                refusal = refused;
            }
        }

        void readUnsaved() throws EventFolderException {
            folder = EventFolder.openUnsaved(path, unsaved.orElseThrow());
        }

        private EventFolder readOnly(EventFolderException refused) throws EventFolderException {
            try {
                return EventFolder.openReadOnly(path);
            } catch (EventFolderException unreadable) {
                throw refused;
            }
        }
    }
}
