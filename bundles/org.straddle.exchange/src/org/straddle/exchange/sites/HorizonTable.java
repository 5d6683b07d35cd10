package org.straddle.exchange.sites;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.sky.Horizon;
import org.straddle.words.Catalogue;

/**
 * A horizon mask as a table: two columns, azimuth and elevation in degrees, parted by commas, semicolons or tabs. A
 * first line with the names of the columns may stand in front, in either order of columns; lines that begin with #
 * are remarks.
 */
public final class HorizonTable {

    private static final Catalogue TEXTS = Catalogue.of(HorizonTable.class);

    private static final String RIGHT_FILE = TEXTS.text("horizonTable.chooseTextFile");
    private static final String REPAIR = TEXTS.text("horizonTable.correctLineRead");
    private static final int MOST_POINTS = 3600;
    private static final int LARGEST_BYTES = 1 << 20;

    private HorizonTable() {
    }

    /** @throws ReadException with the first line that is wrong */
    public static Horizon read(Path path) throws ReadException {
        MapSource source = MapSource.of(path, RIGHT_FILE);
        if (source.size() > LARGEST_BYTES) {
            throw source.refuse(0, TEXTS.text("horizonTable.fileLargerThan",
                    "largestBytes", (LARGEST_BYTES >> 20)), RIGHT_FILE);
        }
        return read(SourceFile.read(path));
    }

    /** @throws ReadException with the first line that is wrong */
    public static Horizon read(SourceFile file) throws ReadException {
        String[] lines = text(file).split("\\R", -1);
        List<Horizon.Point> points = new ArrayList<>();
        Map<Double, Integer> lineOf = new HashMap<>();
        boolean swapped = false;
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(line.contains(";") ? ";" : line.contains("\t") ? "\t" : ",", -1);
            if (cells.length != 2) {
                throw file.refuse(i + 1, TEXTS.text("horizonTable.lineHasLength",
                        "length", cells.length), line.contains(",") && cells.length > 2
                                ? TEXTS.text("horizonTable.writeDecimalPoints") : REPAIR);
            }
            if (points.isEmpty() && cells[0].strip().matches("\\p{L}.*")) {
                swapped = cells[0].strip().toLowerCase(Locale.ROOT).startsWith("el");
                continue;
            }
            Horizon.Point point = point(file, i + 1, cells[swapped ? 1 : 0].strip(), cells[swapped ? 0 : 1].strip());
            Integer before = lineOf.put(point.azimuthDeg(), i + 1);
            if (before != null) {
                throw file.refuse(i + 1, TEXTS.text("horizonTable.azimuthStandsLine",
                        "cells", cells[swapped ? 1 : 0].strip(), "before", before,
                        "case", point.azimuthDeg() == 0), TEXTS.text("horizonTable.takeOneTwo"));
            }
            points.add(point);
            if (points.size() > MOST_POINTS) {
                throw file.refuse(i + 1, TEXTS.text("horizonTable.fileHasMore",
                        "mostPoints", MOST_POINTS), TEXTS.text("horizonTable.givePointEach"));
            }
        }
        if (points.isEmpty()) {
            throw file.refuse(0, TEXTS.text("horizonTable.fileHoldsPoints"), RIGHT_FILE);
        }
        return new Horizon(points);
    }

    private static String text(SourceFile file) throws ReadException {
        try {
            return file.text();
        } catch (ReadException e) {
            throw new ReadException(e.file(), e.line(), e.what(), RIGHT_FILE, e);
        }
    }

    private static Horizon.Point point(SourceFile file, int line, String azimuth, String elevation) throws ReadException {
        double azimuthDeg = number(file, line, azimuth);
        double elevationDeg = number(file, line, elevation);
        try {
            return new Horizon.Point(azimuthDeg == 360 ? 0 : azimuthDeg, elevationDeg);
        } catch (IllegalArgumentException e) {
            throw file.refuse(line, e.getMessage() + ".", REPAIR);
        }
    }

    private static double number(SourceFile file, int line, String written) throws ReadException {
        String plain = written.endsWith("°") ? written.substring(0, written.length() - 1).strip() : written;
        if (!plain.matches("[+-]?(\\d{1,6}(\\.\\d{0,15})?|\\.\\d{1,15})")) {
            throw file.refuse(line, TEXTS.text("horizonTable.notNumberDegrees",
                    "written", written.length() > 40 ? written.substring(0, 40) + "…" : written), plain.contains(",")
                    ? TEXTS.text("horizonTable.writePointInstead") : REPAIR);
        }
        return Double.parseDouble(plain);
    }

    /** The table with its line of names; {@link #read} reads it back to an equal mask. */
    public static String write(Horizon horizon) {
        StringBuilder text = new StringBuilder("azimuthDeg,elevationDeg\r\n");
        for (Horizon.Point point : horizon.points()) {
            text.append(point.azimuthDeg()).append(',').append(point.elevationDeg()).append("\r\n");
        }
        return text.toString();
    }
}
