package org.straddle.exchange.sites;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.exchange.formats.Purpose;
import org.straddle.words.Catalogue;

/**
 * Points of a file as rows under the names that the file gives, before anybody says what they mean: the lines of a CSV
 * file, the waypoints of a GPX file, the points of a GeoJSON file. Which it is shows in the content.
 *
 * @param name    of the file
 * @param columns each name once
 * @param rows    in the order of the file, at least one
 * @param remarks sentences on what was left out, with lines
 */
public record SourceTable(String name, List<String> columns, List<Row> rows, List<String> remarks) {

    private static final Catalogue TEXTS = Catalogue.of(SourceTable.class);

    /** More is no list of sites for one event. */
    public static final int MOST_ROWS = 20_000;

    /** Names of the columns with what a file gives as coordinates; no column of a file has round brackets of its own. */
    public static final String LATITUDE = "(latitude)";
    public static final String LONGITUDE = "(longitude)";
    public static final String ALTITUDE = "(altitude)";

    static final String RIGHT_FILE =
            TEXTS.text("sourceTable.chooseCsvFile");
    static final String REPAIR = TEXTS.text("horizonTable.correctLineRead");
    static final int LARGEST_BYTES = 16 << 20;
    static final int MOST_COLUMNS = 200;
    static final int LONGEST_VALUE = 2000;

    /**
     * One point.
     *
     * @param line   where it begins in the file, from 1
     * @param values one for each column, empty where the file says nothing
     */
    public record Row(int line, List<String> values) {

        public Row {
            values = List.copyOf(values);
        }
    }

    public SourceTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        remarks = List.copyOf(remarks);
    }

    /**
     * @param monitor may be null
     * @throws ReadException with the first line that is wrong; then nothing was taken
     */
    public static SourceTable read(Path path, IProgressMonitor monitor) throws ReadException {
        return read(MapSource.of(path, RIGHT_FILE), monitor);
    }

    /** As {@link #read(Path, IProgressMonitor)}, for content that is at hand. */
    public static SourceTable read(String name, byte[] content) throws ReadException {
        return read(MapSource.of(name, content), null);
    }

    private static SourceTable read(MapSource source, IProgressMonitor monitor) throws ReadException {
        String text = text(source, monitor);
        SourceTable table = switch (FileFormat.of(text, Purpose.SITES).orElse(FileFormat.TABLE)) {
            case GPX -> GpxTable.read(source, text);
            case GEOJSON -> GeoJsonTable.read(source, text);
            default -> CsvTable.read(source, text);
        };
        if (table.rows().isEmpty()) {
            throw source.refuse(0, TEXTS.text("sourceTable.fileHoldsPoints",
                    "remarks", table.remarks().isEmpty() ? "." : ": " + table.remarks().get(0)),
                    RIGHT_FILE);
        }
        return table;
    }

    private static String text(MapSource source, IProgressMonitor monitor) throws ReadException {
        byte[] bytes;
        try (InputStream in = source.open(monitor)) {
            bytes = in.readNBytes(LARGEST_BYTES + 1);
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
        if (bytes.length > LARGEST_BYTES) {
            throw source.refuse(0, TEXTS.text("sourceTable.fileLargerThan",
                    "largestBytes", (LARGEST_BYTES >> 20)), RIGHT_FILE);
        }
        if (bytes.length > 1 && (bytes[0] & 0xFE) == 0xFE && (bytes[1] & 0xFE) == 0xFE) {
            throw source.refuse(1, TEXTS.text("sourceTable.textUtf"), TEXTS.text("sourceTable.saveAsPlain"));
        }
        ByteBuffer left = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(left).toString();
            if (text.isBlank()) {
                throw source.refuse(0, TEXTS.text("sourceTable.fileEmpty"), RIGHT_FILE);
            }
            int nul = text.indexOf('\0');
            if (nul >= 0) {
                throw source.refuse(1 + (int) text.substring(0, nul).chars().filter(c -> c == '\n').count(),
                        TEXTS.text("sourceTable.characterNulSo"), RIGHT_FILE);
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            int line = 1;
            for (int i = 0; i < left.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            throw new ReadException(source.name(), line, TEXTS.text("sourceTable.notTextNot"),
                    TEXTS.text("sourceTable.spreadsheetChooseFormat"), e);
        }
    }

    /** The values of a row under a column. */
    public String value(Row row, String column) {
        int index = columns.indexOf(column);
        return index < 0 ? "" : row.values().get(index);
    }

    /** The first values under a column that say something, for somebody who decides what the column means. */
    public List<String> samples(String column, int most) {
        int index = columns.indexOf(column);
        return rows.stream().map(row -> row.values().get(index)).filter(value -> !value.isEmpty()).limit(most).toList();
    }

    static void refuseTooMany(MapSource source, int rows, int line) throws ReadException {
        if (rows > MOST_ROWS) {
            throw source.refuse(line, TEXTS.text("sourceTable.fileHasMore", "mostRows", MOST_ROWS),
                    TEXTS.text("sourceTable.cutRegionEvent"));
        }
    }
}
