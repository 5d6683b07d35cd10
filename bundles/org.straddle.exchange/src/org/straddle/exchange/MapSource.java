package org.straddle.exchange;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.store.KeptFile;
import org.straddle.words.Catalogue;

/**
 * Where a map comes from. Unlike a {@link SourceFile} it is not held in memory: the roads of a country are larger
 * than what is kept of them.
 */
public final class MapSource {

    private static final Catalogue TEXTS = Catalogue.of(MapSource.class);

    public static final String RIGHT_FILE = TEXTS.text("mapSource.chooseGpxGeojson");

    /** More is not one region's roads, and would not fit into memory. */
    public static final long LARGEST_BYTES = 1L << 30;

    private static final int TICKS = 1000;

    /** Begins a file anew. */
    private interface Content {
        InputStream open() throws IOException;
    }

    private final String name;
    private final Content content;
    private final long size;

    private MapSource(String name, Content content, long size) {
        this.name = name;
        this.content = content;
        this.size = size;
    }

    public static MapSource of(String name, byte[] bytes) {
        return new MapSource(name, () -> new ByteArrayInputStream(bytes), bytes.length);
    }

    /** @throws ReadException when it is not there, or too large */
    public static MapSource of(KeptFile file) throws ReadException {
        if (!file.exists()) {
            throw new ReadException(file.name(), 0, TEXTS.text("mapSource.thereSuchFile"),
                    TEXTS.text("mapSource.putBackFrom"));
        }
        return of(file.name(), file::open, file.size());
    }

    private static MapSource of(String name, Content content, long size) throws ReadException {
        if (size > LARGEST_BYTES) {
            throw new ReadException(name, 0, TEXTS.text("mapSource.fileLargerThan", "largestBytes", (LARGEST_BYTES >> 20)),
                    TEXTS.text("mapSource.cutRegionEvent"));
        }
        return new MapSource(name, content, size);
    }

    /**
     * @param rightFile what to choose instead, a sentence
     * @throws ReadException when it is no plain file, or too large
     */
    public static MapSource of(Path path, String rightFile) throws ReadException {
        String name = path.getFileName() == null ? path.toString() : path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new ReadException(name, 0, Files.exists(path) ? TEXTS.text("mapSource.notPlainFile")
                    : TEXTS.text("mapSource.noSuchFile"),
                    rightFile);
        }
        try {
            return of(name, () -> Files.newInputStream(path), Files.size(path));
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    public static ReadException unreadable(String name, IOException cause) {
        return new ReadException(name, 0, TEXTS.text("mapSource.fileCannotRead", "cause", cause.getMessage()),
                TEXTS.text("mapSource.checkDiskYour"), cause);
    }

    public String name() {
        return name;
    }

    /** In bytes. */
    public long size() {
        return size;
    }

    public ReadException refuse(int line, String what, String whatToDo) {
        return new ReadException(name, line, what, whatToDo);
    }

    /** The content from its beginning; reading it reports progress, and stops when cancelled. */
    public InputStream open(IProgressMonitor monitor) throws IOException {
        return new Watched(content.open(), SubMonitor.convert(monitor, TEXTS.text("mapSource.reading",
                "name", name), TICKS), Math.max(1, size / TICKS));
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
                throw new IOException(TEXTS.text("mapSource.moreThanMb", "largestBytes", (LARGEST_BYTES >> 20)));
            }
            untold += read;
            if (untold >= bytesPerTick) {
                progress.worked((int) (untold / bytesPerTick));
                untold %= bytesPerTick;
            }
        }
    }
}
