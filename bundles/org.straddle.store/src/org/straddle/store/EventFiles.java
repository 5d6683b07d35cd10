package org.straddle.store;

/** Where the bytes of an event's files come from: a disk, or a save that is about to be made. */
interface EventFiles {

    /** @return the bytes, or null when there is no such file */
    byte[] read(String name) throws EventFolderException;
}
