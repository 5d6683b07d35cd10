package org.straddle.ui.session;

import java.nio.file.Path;

import org.straddle.store.EventFolderException;
import org.straddle.store.Saving;

/** A save that was begun: written on any thread while the event is edited on, then told to {@link EventSession#saved}. */
public final class SaveRun {

    private final Saving saving;
    private final SessionStack.Mark mark;
    private final int notes;
    private final Path folder;

    SaveRun(Saving saving, SessionStack.Mark mark, int notes, Path folder) {
        this.saving = saving;
        this.mark = mark;
        this.notes = notes;
        this.folder = folder;
    }

    /** See {@link Saving#write}. */
    public void write() throws EventFolderException {
        saving.write();
    }

    SessionStack.Mark mark() {
        return mark;
    }

    /** Where the event lay when the save began. */
    Path folder() {
        return folder;
    }

    int notes() {
        return notes;
    }
}
