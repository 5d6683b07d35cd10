package org.straddle.store;

import java.io.IOException;
import java.nio.file.Path;

/**
 * The steps that change a disk, one method each. Power may fail between any two of them and within each; tests stand
 * in for the disk here to make it fail.
 */
interface FileSteps {

    void createFolder(Path folder) throws IOException;

    /** Creates a new file with all bytes and forces them to the medium. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Creates a new file with the bytes of another and forces them to the medium. */
    void copy(Path from, Path to) throws IOException;

    /** Puts a file in place of another, at once. */
    void rename(Path from, Path to) throws IOException;

    void deleteIfExists(Path fileOrEmptyFolder) throws IOException;

    /** Forces the entries of a folder to the medium, where the system can. */
    void forceFolder(Path folder) throws IOException;
}
