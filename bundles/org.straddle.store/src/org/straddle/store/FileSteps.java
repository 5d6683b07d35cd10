package org.straddle.store;

import java.io.IOException;

/**
 * The steps that change a disk, one method each. Power may fail between any two of them and within each; tests stand
 * in for the disk here to make it fail.
 */
interface FileSteps {

    /** Creates a folder, with its parents, unless it is there, and forces its entry to the medium. */
    void createFolder(Place folder) throws IOException;

    /** Creates a new file with all bytes and forces them, not yet its entry in the folder, to the medium. */
    void write(Place file, byte[] bytes) throws IOException;

    /** Creates a new file with the bytes of another and forces them likewise. */
    void copy(Place from, Place to) throws IOException;

    /** Puts a file in place of another, at once. */
    void rename(Place from, Place to) throws IOException;

    void deleteIfExists(Place fileOrEmptyFolder) throws IOException;

    /** Forces the entries of a folder to the medium, where the system can. */
    void forceFolder(Place folder) throws IOException;
}
