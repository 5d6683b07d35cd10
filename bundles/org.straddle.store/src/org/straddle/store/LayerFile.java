package org.straddle.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * A file of the layers folder as it was when it was asked for: on the disk, or in memory until the next save. Unlike
 * its {@link EventFolder} it may be read on any thread. Two are equal while the content is the same, as far as size
 * and time of the file tell, so what was made of one may be kept for the next.
 */
public final class LayerFile {

    private final String name;
    private final Path path;
    /** Null when it lies on the disk. */
    private final byte[] waiting;
    /** Size in bytes, -1 when there is no such file; and what tells contents of one size apart. */
    private final long size;
    private final long stamp;

    private LayerFile(String name, Path path, byte[] waiting, long size, long stamp) {
        this.name = name;
        this.path = path;
        this.waiting = waiting;
        this.size = size;
        this.stamp = stamp;
    }

    static LayerFile inMemory(String name, Path path, byte[] waiting) {
        return new LayerFile(name, path, waiting, waiting.length, Arrays.hashCode(waiting));
    }

    static LayerFile onDisk(String name, Path path) {
        try {
            if (Files.isRegularFile(path)) {
                return new LayerFile(name, path, null, Files.size(path), Files.getLastModifiedTime(path).toMillis());
            }
        } catch (IOException e) {
            // Not to be read now: as good as not there.
        }
        return missing(name, path);
    }

    static LayerFile missing(String name, Path path) {
        return new LayerFile(name, path, null, -1, 0);
    }

    /** Relative to the layers folder, with {@code /}. */
    public String name() {
        return name;
    }

    /** Where it lies; empty while it waits in memory for the next save. */
    public Optional<Path> onDisk() {
        return waiting == null ? Optional.of(path) : Optional.empty();
    }

    public boolean exists() {
        return size >= 0;
    }

    /** Bytes; -1 when there is no such file. */
    public long size() {
        return size;
    }

    /** The content from its beginning, for the caller to close. */
    public InputStream open() throws IOException {
        if (!exists()) {
            throw new NoSuchFileException(path.toString());
        }
        return waiting == null ? Files.newInputStream(path) : new ByteArrayInputStream(waiting);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LayerFile that && path.equals(that.path) && size == that.size && stamp == that.stamp
                && (waiting == null) == (that.waiting == null);
    }

    @Override
    public int hashCode() {
        return path.hashCode() + Long.hashCode(stamp);
    }

    @Override
    public String toString() {
        return name + " (" + size + " bytes)";
    }
}
