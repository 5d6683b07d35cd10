package org.straddle.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.grid.Squares;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;

/**
 * Sites as a table for spreadsheets: CSV (RFC 4180) in UTF-8 with the columns {@code name}, {@code latitudeDeg},
 * {@code longitudeDeg}, {@code altitudeM}, {@code kind} and {@code squares} (parted by blanks). The first three are
 * needed; columns that are not known are passed over. Without squares a site is inside the one it lies in; without a
 * kind it is what the number of its squares says.
 */
public final class SiteTable {

    private static final int LARGEST_BYTES = 16 << 20;
    private static final String RIGHT_FILE = "Choose a CSV file whose first line is, for example: name,latitudeDeg,longitudeDeg,squares";
    private static final String REPAIR = "Correct the line and read the file again.";
    private static final String[] COLUMNS = {"name", "latitudeDeg", "longitudeDeg", "altitudeM", "kind", "squares"};
    private static final int NEEDED = 3;
    private static final CSVFormat CSV = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true)
            .setIgnoreHeaderCase(true).setIgnoreEmptyLines(true).setTrim(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW).get();

    private SiteTable() {
    }

    /** @throws ReadException with the first line that is wrong */
    public static List<Site> read(Path path, CoordinateOrder order) throws ReadException {
        return read(MapSource.of(path, RIGHT_FILE), order);
    }

    /** @throws ReadException with the first line that is wrong */
    public static List<Site> read(SourceFile file, CoordinateOrder order) throws ReadException {
        return read(MapSource.of(file.name(), file.bytes()), order);
    }

    private static List<Site> read(MapSource source, CoordinateOrder order) throws ReadException {
        List<Site> sites = new ArrayList<>();
        int line = 1;
        // The parser counts ends of lines: give it one for the last line too.
        try (CSVParser parser = CSVParser.parse(text(source) + "\n", CSV)) {
            for (String column : List.of(COLUMNS).subList(0, NEEDED)) {
                if (!parser.getHeaderMap().containsKey(column)) {
                    throw source.refuse(1, "there is no column " + column + ".", RIGHT_FILE);
                }
            }
            for (CSVRecord row : parser) {
                line = (int) parser.getCurrentLineNumber() - (int) row.stream().flatMapToInt(String::chars).filter(c -> c == '\n').count();
                sites.add(site(source, row, order, line));
            }
        } catch (ReadException e) {
            throw e;
        } catch (IOException | UncheckedIOException | IllegalArgumentException | IllegalStateException e) {
            throw new ReadException(source.name(), line, "the table is damaged from here on: " + e.getMessage(), REPAIR, e);
        }
        if (sites.isEmpty()) {
            throw source.refuse(0, "the file holds no sites.", RIGHT_FILE);
        }
        return sites;
    }

    private static String text(MapSource source) throws ReadException {
        byte[] bytes;
        try (InputStream in = source.open(null)) {
            bytes = in.readNBytes(LARGEST_BYTES + 1);
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
        if (bytes.length > LARGEST_BYTES) {
            throw source.refuse(0, "the file is larger than " + (LARGEST_BYTES >> 20) + " MB.", RIGHT_FILE);
        }
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.isBlank() || text.indexOf('\0') >= 0) {
                throw source.refuse(0, text.isBlank() ? "the file is empty." : "this is not a text file.", RIGHT_FILE);
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new ReadException(source.name(), 0, "this is not text (or not in UTF-8).", RIGHT_FILE, e);
        }
    }

    private static Site site(MapSource source, CSVRecord row, CoordinateOrder order, int line) throws ReadException {
        if (!row.isConsistent()) {
            throw source.refuse(line, "the line has " + row.size() + " values, but the first line names "
                    + row.getParser().getHeaderNames().size() + " columns.", REPAIR);
        }
        boolean swap = order == CoordinateOrder.SWAPPED;
        double latitude = number(source, row, swap ? "longitudeDeg" : "latitudeDeg", line);
        double longitude = number(source, row, swap ? "latitudeDeg" : "longitudeDeg", line);
        MapContent.checkPosition(source, latitude, longitude, 180, line);
        GeoPosition position = new GeoPosition(latitude, longitude);
        Site site = Fresh.site();
        site.setName(cell(row, "name"));
        site.setLatitudeDeg(position.latitudeDeg());
        site.setLongitudeDeg(position.longitudeDeg());
        if (!cell(row, "altitudeM").isEmpty()) {
            site.setAltitudeM(number(source, row, "altitudeM", line));
        }
        List<Square> squares;
        try {
            squares = Squares.parse(cell(row, "squares"));
        } catch (IllegalArgumentException e) {
            throw source.refuse(line, e.getMessage(), REPAIR);
        }
        site.getSquares().clear();
        (squares.isEmpty() ? List.of(Square.of(position)) : squares).forEach(square -> site.getSquares().add(square.name()));
        site.setKind(kind(source, cell(row, "kind"), site.getSquares().size(), line));
        return site;
    }

    private static SiteKind kind(MapSource source, String written, int squares, int line) throws ReadException {
        if (written.isEmpty()) {
            return squares == 1 ? SiteKind.INSIDE : squares == 2 ? SiteKind.LINE : SiteKind.CORNER;
        }
        for (SiteKind kind : SiteKind.values()) {
            if (kind.getLiteral().equalsIgnoreCase(written)) {
                return kind;
            }
        }
        throw source.refuse(line, "the kind \"" + shortened(written) + "\" is neither inside nor line nor corner.", REPAIR);
    }

    private static double number(MapSource source, CSVRecord row, String column, int line) throws ReadException {
        String written = cell(row, column);
        if (written.matches("[+-]?\\d{0,9}\\.?\\d{0,20}([eE][+-]?\\d{1,2})?")) {
            try {
                return Double.parseDouble(written);
            } catch (NumberFormatException e) {
                // A sign or a point alone; said below.
            }
        }
        throw source.refuse(line, column + " is \"" + shortened(written) + "\", which is not a number.",
                written.contains(",") ? "Write a point instead of the comma in decimal numbers." : REPAIR);
    }

    private static String cell(CSVRecord row, String column) {
        return row.isMapped(column) ? row.get(column) : "";
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    /** The same columns, all of them; lines end as RFC 4180 has it. */
    public static String write(List<Site> sites) {
        StringBuilder text = new StringBuilder();
        try {
            CSVFormat.RFC4180.builder().setHeader(COLUMNS).get().print(text);
            for (Site site : sites) {
                CSVFormat.RFC4180.printRecord(text, site.getName(), plain(site.getLatitudeDeg()), plain(site.getLongitudeDeg()),
                        plain(site.getAltitudeM()), site.getKind() == null ? "" : site.getKind().getLiteral(),
                        String.join(" ", site.getSquares()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** All digits that are needed to read the same value back, without an exponent. */
    private static String plain(double value) {
        return Double.isFinite(value) ? new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString() : "";
    }
}
