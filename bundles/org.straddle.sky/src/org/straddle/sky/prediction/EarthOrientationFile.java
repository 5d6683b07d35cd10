package org.straddle.sky.prediction;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.orekit.data.LazyLoadedDataContext;
import org.orekit.errors.OrekitException;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EopHistoryLoader;
import org.orekit.frames.ITRFVersion;
import org.orekit.frames.ITRFVersionLoader.ITRFVersionConfiguration;
import org.orekit.frames.ItrfVersionProvider;
import org.orekit.utils.IERSConventions;
import org.straddle.sky.track.LeapSeconds;
import org.straddle.words.Catalogue;

/** Reads the two text files in which the IERS publishes Earth orientation. What kind it is shows in the rows. */
final class EarthOrientationFile {

    private static final Catalogue TEXTS = Catalogue.of(EarthOrientationFile.class);

    /** Larger than any of them: all days since 1962 take 3 MB. */
    private static final int MOST_BYTES = 20_000_000;
    /** Interpolation takes four days. */
    private static final int LEAST_ROWS = 4;
    /** So much of a file is looked at to tell its kind: the headings are some lines long. */
    private static final int LOOKED_AT = 10_000;

    /** Year, month, day by two digits each, and the modified Julian day with two decimals, in fixed columns. */
    private static final Pattern FINALS_ROW = Pattern.compile("(?m)^[ \\d]\\d[ \\d]\\d[ \\d]\\d {1,2}\\d{5}\\.\\d\\d [IP ] ");
    /** Year, month, day, in newer files the hour, and the modified Julian day. */
    private static final Pattern C04_ROW = Pattern
            .compile("(?m)^ *(19|20)\\d\\d +\\d{1,2} +\\d{1,2}( +\\d{1,2})? +\\d{5}(\\.\\d\\d)? +-?\\d*\\.\\d+ ");

    /** Columns of a finals row from 0: what follows the date, and UT1−UTC with its error, by IERS readme.finals2000A. */
    private static final int DATE_END = 15;
    private static final int TURN_START = 58;
    private static final int TURN_END = 78;

    private EarthOrientationFile() {
    }

    /** The name of the publication that the first rows look like; empty when they look like neither. */
    static Optional<String> kind(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
        return FINALS_ROW.matcher(start).find() ? Optional.of(EarthOrientation.FINALS)
                : C04_ROW.matcher(start).find() ? Optional.of(EarthOrientation.C04) : Optional.empty();
    }

    static SortedSet<EOPEntry> read(Path file) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        return read(file.toString(), bytes);
    }

    static SortedSet<EOPEntry> read(String name, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            throw new EarthOrientationException(name, TEXTS.text("earthOrientationFile.largerThanAny"), null);
        }
        String published = kind(bytes).orElseThrow(
                () -> new EarthOrientationException(name, TEXTS.text("earthOrientationFile.hasRows",
                        "finals", EarthOrientation.FINALS, "c04", EarthOrientation.C04), null));
        SortedSet<EOPEntry> entries = new TreeSet<>(Comparator.comparingInt(EOPEntry::getMjd));
        try {
            entries.addAll(published.equals(EarthOrientation.FINALS)
                    ? parser(true).parse(new ByteArrayInputStream(withValues(name, bytes)), name)
                    : parser(false).parse(new ByteArrayInputStream(bytes), name));
        } catch (OrekitException | NumberFormatException | IndexOutOfBoundsException | IOException e) {
            // Of Java's own failures the words ("For input string") tell nothing to anybody.
            throw new EarthOrientationException(name, e instanceof OrekitException ? e.getMessage()
                    : TEXTS.text("earthOrientationFile.rowDamaged"), e);
        }
        if (entries.size() < LEAST_ROWS) {
            throw new EarthOrientationException(name, TEXTS.text("earthOrientationFile.holdsDays",
                    "entries", entries.size()), null);
        }
        return entries;
    }

    /** Days of the forecast that have no values yet stand in the file by their date alone, and would be read as zeros. */
    private static byte[] withValues(String name, byte[] bytes) {
        StringBuilder rows = new StringBuilder();
        for (String row : new String(bytes, StandardCharsets.ISO_8859_1).lines().toList()) {
            boolean dateAlone = row.length() >= DATE_END && row.substring(DATE_END).isBlank();
            if (dateAlone || row.isBlank()) {
                continue;
            }
            if (row.length() > DATE_END && columns(row, TURN_START, TURN_END).isBlank()) {
                throw new EarthOrientationException(name, TEXTS.text("earthOrientationFile.rowHasUt", "row", row), null);
            }
            rows.append(row).append('\n');
        }
        return rows.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String columns(String row, int from, int to) {
        return row.substring(Math.min(from, row.length()), Math.min(to, row.length()));
    }

    private static EopHistoryLoader.Parser parser(boolean finals) {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        context.getTimeScales().addUTCTAIOffsetsLoader(LeapSeconds::offsets);
        // The realisation of the frame moves a place by centimetres at most: one name serves all.
        ItrfVersionProvider newest = (any, mjd) -> new ITRFVersionConfiguration("", ITRFVersion.ITRF_2020,
                Integer.MIN_VALUE, Integer.MAX_VALUE);
        return finals
                ? EopHistoryLoader.Parser.newFinalsColumnsParser(IERSConventions.IERS_2010, newest,
                        context.getTimeScales(), true)
                : EopHistoryLoader.Parser.newEopC04Parser(IERSConventions.IERS_2010, newest, context.getTimeScales());
    }
}
