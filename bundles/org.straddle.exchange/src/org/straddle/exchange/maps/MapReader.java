package org.straddle.exchange.maps;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.words.Catalogue;

/**
 * Reads roads, tracks and other things on a map, from GPX or GeoJSON; which it is shows in the content. A file is
 * taken as a whole or refused with its first bad line. What is merely of no use, such as a line with one position,
 * is left out with a remark, because maps made by others are full of it.
 */
public final class MapReader {

    private static final Catalogue TEXTS = Catalogue.of(MapReader.class);

    private static final int LONGEST_BLANK_START = 1 << 16;

    private MapReader() {
    }

    /** @throws ReadException when the file is not there, unknown or damaged, or holds nothing */
    public static MapFile read(Path path) throws ReadException {
        return read(path, CoordinateOrder.OF_THE_FORMAT, null);
    }

    /**
     * @param monitor may be null
     * @throws ReadException when the file is not there, unknown or damaged, or holds nothing; its cause is a
     *                       {@link CoordinateOutOfRange} when another order may help
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static MapFile read(Path path, CoordinateOrder order, IProgressMonitor monitor) throws ReadException {
        return read(MapSource.of(path, MapSource.RIGHT_FILE), order, monitor);
    }

    /** As {@link #read(Path, CoordinateOrder, IProgressMonitor)}, for content that is at hand. */
    public static MapFile read(SourceFile file, CoordinateOrder order, IProgressMonitor monitor) throws ReadException {
        return read(MapSource.of(file.name(), file.bytes()), order, monitor);
    }

    static MapFile read(MapSource source, CoordinateOrder order, IProgressMonitor monitor) throws ReadException {
        MapContent content = new MapContent(source, order);
        try (InputStream in = new BufferedInputStream(source.open(monitor), LONGEST_BLANK_START)) {
            int start = firstByte(source, in);
            if (start == '<') {
                GpxMap.read(source, in, content);
                return content.toFile(FileFormat.GPX);
            }
            if (start == '{') {
                GeoJsonMap.read(source, in, content);
                return content.toFile(FileFormat.GEOJSON);
            }
            throw source.refuse(1, TEXTS.text("mapReader.neitherGpxNor"), MapSource.RIGHT_FILE);
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
    }

    /** The first byte that is not blank, without taking anything from the stream. */
    private static int firstByte(MapSource source, InputStream in) throws IOException {
        in.mark(LONGEST_BLANK_START);
        int first = in.read();
        if (first == 0xFE || first == 0xFF) {
            throw source.refuse(1, TEXTS.text("mapReader.textUtf"), TEXTS.text("mapReader.saveAsPlain"));
        }
        if (first == 0xEF) {
            // The mark that some editors put before UTF-8.
            in.read();
            in.read();
            first = in.read();
        }
        int read = 4;
        while (first == ' ' || first == '\t' || first == '\r' || first == '\n') {
            if (++read == LONGEST_BLANK_START) {
                break;
            }
            first = in.read();
        }
        if (first < 0) {
            throw source.refuse(0, TEXTS.text("mapReader.fileEmpty"), MapSource.RIGHT_FILE);
        }
        in.reset();
        return first;
    }
}
