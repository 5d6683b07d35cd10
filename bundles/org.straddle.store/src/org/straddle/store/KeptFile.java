package org.straddle.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

import org.straddle.words.Catalogue;

/**
 * A file that an event keeps as it came, such as a map or a photo, as it was when it was asked for: on the disk, or in
 * memory until the next save. Unlike its {@link EventFolder} it may be read on any thread. Two are equal while the
 * content is the same, as far as size and time of the file tell, so what was made of one may be kept for the next.
 */
public final class KeptFile {

    private static final Catalogue TEXTS = Catalogue.of(KeptFile.class);

    private final String name;
    private final Path path;
    /** Null when it does not lie on the disk. */
    private final Place place;
    /** Null when it lies on the disk. */
    private final byte[] waiting;
    /** Size in bytes, -1 when there is no such file; and what tells contents of one size apart. */
    private final long size;
    private final long stamp;

    private KeptFile(String name, Path path, Place place, byte[] waiting, long size, long stamp) {
        this.name = name;
        this.path = path;
        this.place = place;
        this.waiting = waiting;
        this.size = size;
        this.stamp = stamp;
    }

    static KeptFile inMemory(String name, Path path, byte[] waiting) {
        return new KeptFile(name, path, null, waiting, waiting.length, Arrays.hashCode(waiting));
    }

    static KeptFile onDisk(String name, Place place) {
        try {
            return place.tree().file(place).map(found -> new KeptFile(name, place.path(), place, null, found.size(),
                    found.lastModifiedTime().toMillis())).orElseGet(() -> missing(name, place.path()));
        } catch (IOException e) {
            // No plain file of this folder, or not to be read now: as good as not there.
            return missing(name, place.path());
        }
    }

    static KeptFile missing(String name, Path path) {
        return new KeptFile(name, path, null, null, -1, 0);
    }

    /** Relative to the folder of its kind, with {@code /}. */
    public String name() {
        return name;
    }

    /**
     * Where it lies, to be named to the user or handed to another program; empty while it waits in memory for the next
     * save. Read it by {@link #open}, which follows no link.
     */
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

    /** When a file on the disk was last written, UTC; long ago for any other. */
    public Instant modified() {
        return waiting == null ? Instant.ofEpochMilli(stamp) : Instant.EPOCH;
    }

    /** The content from its beginning, for the caller to close. */
    public InputStream open() throws IOException {
        if (!exists()) {
            throw new NoSuchFileException(path.toString());
        }
        return waiting == null ? place.tree().read(place) : new ByteArrayInputStream(waiting);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof KeptFile that && path.equals(that.path) && size == that.size && stamp == that.stamp
                && (waiting == null) == (that.waiting == null);
    }

    @Override
    public int hashCode() {
        return Objects.hash(path, stamp);
    }

    @Override
    public String toString() {
        return TEXTS.text("layerFile.bytes", "name", name, "size", size);
    }
}
