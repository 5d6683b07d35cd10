package org.straddle.store;

import java.util.Map;

/**
 * A save as it was asked for: what it will write is taken from the event already, so the event may be edited on while it
 * is written, on another thread. An edit that comes later is not in it.
 */
public final class Saving {

    /** What is left to do, and may fail. */
    interface Work {
        void run() throws EventFolderException;
    }

    private final Map<String, byte[]> files;
    private final Map<String, byte[]> brought;
    private final Work work;

    Saving(Map<String, byte[]> files, Map<String, byte[]> brought, Work work) {
        this.files = files;
        this.brought = brought;
        this.work = work;
    }

    /** The event's own files, by name. */
    Map<String, byte[]> files() {
        return files;
    }

    /** Files brought in since the last save that the event names. */
    Map<String, byte[]> brought() {
        return brought;
    }

    /**
     * Writes what changed since the event was opened or saved. When this fails, the folder is as it was, unless the
     * message says that the save counts and will be finished.
     */
    public void write() throws EventFolderException {
        work.run();
    }
}
