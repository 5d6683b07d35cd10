package org.straddle.store;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;

/** A disk that may only be read: what would change it fails as the system lets it fail, the rest does nothing. */
final class ReadOnlySteps implements FileSteps {

    static final String REASON = "Read-only file system";

    private static IOException refused(Place place) {
        return new FileSystemException(place.path().toString(), null, REASON);
    }

    @Override
    public void createFolder(Place folder) throws IOException {
        if (!Files.isDirectory(folder.path())) {
            throw refused(folder);
        }
    }

    @Override
    public void write(Place file, byte[] bytes) throws IOException {
        throw refused(file);
    }

    @Override
    public void copy(Place from, Place to) throws IOException {
        throw refused(to);
    }

    @Override
    public void rename(Place from, Place to) throws IOException {
        throw refused(to);
    }

    @Override
    public void deleteIfExists(Place fileOrEmptyFolder) throws IOException {
        if (Files.exists(fileOrEmptyFolder.path())) {
            throw refused(fileOrEmptyFolder);
        }
    }

    /** There is nothing to force. */
    @Override
    public void forceFolder(Place folder) {
    }
}
