package org.straddle.exchange;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/**
 * Where a map comes from. Unlike a {@link SourceFile} it is not held in memory: the roads of a country are larger
 * than what is kept of them.
 */
final class MapSource {

    static final String RIGHT_FILE = "Choose a GPX or GeoJSON file.";

    /** More is not one region's roads, and would not fit into memory. */
    static final long LARGEST_BYTES = 1L << 30;

    private static final int TICKS = 1000;

    private final String name;
    private final Path path;
    private final byte[] bytes;
    private final long size;

    private MapSource(String name, Path path, byte[] bytes, long size) {
        this.name = name;
        this.path = path;
        this.bytes = bytes;
        this.size = size;
    }

    static MapSource of(String name, byte[] bytes) {
        return new MapSource(name, null, bytes, bytes.length);
    }

    /**
     * @param rightFile what to choose instead, a sentence
     * @throws ReadException when it is no plain file, or too large
     */
    static MapSource of(Path path, String rightFile) throws ReadException {
        String name = path.getFileName() == null ? path.toString() : path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new ReadException(name, 0, Files.exists(path) ? "this is not a plain file." : "there is no such file.",
                    rightFile);
        }
        try {
            long size = Files.size(path);
            if (size > LARGEST_BYTES) {
                throw new ReadException(name, 0, "the file is larger than " + (LARGEST_BYTES >> 20) + " MB.",
                        "Cut it to the region of the event.");
            }
            return new MapSource(name, path, null, size);
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    static ReadException unreadable(String name, IOException cause) {
        return new ReadException(name, 0, "the file cannot be read (" + cause.getMessage() + ").",
                "Check the disk and your permission to read, then try again.", cause);
    }

    String name() {
        return name;
    }

    ReadException refuse(int line, String what, String whatToDo) {
        return new ReadException(name, line, what, whatToDo);
    }

    /** The content from its beginning; reading it reports progress, and stops when cancelled. */
    InputStream open(IProgressMonitor monitor) throws IOException {
        InputStream content = path == null ? new ByteArrayInputStream(bytes) : Files.newInputStream(path);
        return new Watched(content, SubMonitor.convert(monitor, "Reading " + name, TICKS), Math.max(1, size / TICKS));
    }

    private static final class Watched extends FilterInputStream {

        private final SubMonitor progress;
        private final long bytesPerTick;
        private long untold;
        private long total;

        Watched(InputStream in, SubMonitor progress, long bytesPerTick) {
            super(in);
            this.progress = progress;
            this.bytesPerTick = bytesPerTick;
        }

        @Override
        public int read() throws IOException {
            int next = super.read();
            count(next < 0 ? 0 : 1);
            return next;
        }

        @Override
        public int read(byte[] buffer, int from, int length) throws IOException {
            int read = super.read(buffer, from, length);
            count(Math.max(0, read));
            return read;
        }

        private void count(int read) throws IOException {
            progress.checkCanceled();
            // A file may grow while it is read.
            total += read;
            if (total > LARGEST_BYTES) {
                throw new IOException("more than " + (LARGEST_BYTES >> 20) + " MB");
            }
            untold += read;
            if (untold >= bytesPerTick) {
                progress.worked((int) (untold / bytesPerTick));
                untold %= bytesPerTick;
            }
        }
    }
}
