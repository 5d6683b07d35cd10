package org.straddle.exchange.fixes;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.words.Catalogue;

/**
 * Reads what a receiver recorded while it stood on a mark: a GPX file or a log of NMEA 0183 sentences; which it is
 * shows in the content.
 */
public final class FixReader {

    private static final Catalogue TEXTS = Catalogue.of(FixReader.class);

    static final String RIGHT_FILE = TEXTS.text("fixReader.chooseGpxFile");

    /** A day of sentences at one fix a second is 50 MB. */
    private static final int LARGEST_BYTES = 64 << 20;
    private static final int LOOK_AHEAD = 1 << 12;

    private FixReader() {
    }

    /**
     * @param monitor may be null
     * @throws ReadException when the file is neither, damaged, or holds no fix on WGS 84
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static FixLog read(Path path, IProgressMonitor monitor) throws ReadException {
        return read(MapSource.of(path, RIGHT_FILE), monitor);
    }

    /** As {@link #read(Path, IProgressMonitor)}, for content that is at hand. */
    public static FixLog read(SourceFile file) throws ReadException {
        return read(MapSource.of(file.name(), file.bytes()), null);
    }

    private static FixLog read(MapSource source, IProgressMonitor monitor) throws ReadException {
        if (source.size() > LARGEST_BYTES) {
            throw source.refuse(0, TEXTS.text("fixReader.fileLargerThan", "largestBytes", (LARGEST_BYTES >> 20)),
                    TEXTS.text("fixReader.cutMinutesMark"));
        }
        try (InputStream in = new BufferedInputStream(source.open(monitor), LOOK_AHEAD)) {
            in.mark(LOOK_AHEAD);
            int first = in.read();
            int read = 1;
            while (read < LOOK_AHEAD && (first >= 0 && first <= ' ' || first == 0xEF || first == 0xBB || first == 0xBF)) {
                first = in.read();
                read++;
            }
            in.reset();
            if (first < 0) {
                throw source.refuse(0, TEXTS.text("fixReader.fileEmpty"), RIGHT_FILE);
            }
            if (first <= ' ') {
                throw source.refuse(0, TEXTS.text("fixReader.fileBeginsMore", "lookAhead", LOOK_AHEAD), RIGHT_FILE);
            }
            return first == '<' ? GpxFixes.read(source, in) : NmeaLog.read(source, in);
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
    }
}
