package org.straddle.ui.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.straddle.store.EventFolderException;
import org.straddle.store.Saving;
import org.straddle.store.UnsavedEdits;
import org.straddle.words.Catalogue;

/** Keeps edits that nobody saved where a crash leaves them: at most half a minute of work is lost. UI thread. */
final class UnsavedKeeper {

    private static final Catalogue TEXTS = Catalogue.of(UnsavedKeeper.class);

    /** From the first edit that is not kept yet until it is taken, ms; writing it takes a moment more. */
    private static final int EVERY_MS = 20_000;

    private final Display display;
    private final EventSession session;
    private final Runnable keep = this::keep;
    private boolean waiting;
    /** Whether there were edits in this session: those of one before stay until then. */
    private boolean touched;
    private Job job;

    UnsavedKeeper(Display display, EventSession session) {
        this.display = display;
        this.session = session;
    }

    void edited() {
        touched = true;
        if (!waiting && !session.folder().isReadOnly()) {
            waiting = true;
            display.timerExec(EVERY_MS, keep);
        }
    }

    /** Keeps the edits of now, unless they were saved or undone; text that can be read becomes one first, as when the typing rests. */
    void keep() {
        if (session.isOpen()) {
            session.commitPendingEdits();
        }
        stop();
        if (!session.isOpen() || session.folder().isReadOnly()) {
            return;
        }
        List<String> typed = session.unfinished();
        if (!session.dirty() && typed.isEmpty()) {
            forget(session.folder().path());
            return;
        }
        Saving state;
        try {
            state = session.folder().keepingUnsaved(typed);
        } catch (EventFolderException unfit) {
            // What cannot be saved as it stands cannot be kept either; the next edit may fix it.
            return;
        }
        job = new Job(TEXTS.text("unsavedKeeper.keeping")) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    state.write();
                } catch (EventFolderException failure) {
                    ILog.of(UnsavedKeeper.class).warn(failure.getMessage(), failure);
                }
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.schedule();
    }

    /** The edits of the event in this folder were saved, undone, or let go. */
    void forget(Path event) {
        stop();
        join();
        if (!touched) {
            return;
        }
        touched = false;
        try {
            UnsavedEdits.of(event).discard();
        } catch (IOException failure) {
            ILog.of(UnsavedKeeper.class).warn(TEXTS.text("unsavedKeeper.notremoved",
                    "reason", failure.getMessage()), failure);
        }
    }

    /** Waits for edits that are being kept. */
    void join() {
        try {
            if (job != null) {
                job.join();
                job = null;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void stop() {
        waiting = false;
        display.timerExec(-1, keep);
    }
}
