package org.straddle.sky;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.SortedSet;
import java.util.TreeSet;

import org.orekit.data.LazyLoadedDataContext;
import org.orekit.errors.OrekitException;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EopHistoryLoader;
import org.orekit.frames.ITRFVersion;
import org.orekit.frames.ITRFVersionLoader.ITRFVersionConfiguration;
import org.orekit.frames.ItrfVersionProvider;
import org.orekit.utils.IERSConventions;

/** Reads the two text files in which the IERS publishes Earth orientation. */
final class EarthOrientationFile {

    private static final int MOST_BYTES = 20_000_000;
    /** Interpolation takes four days. */
    private static final int LEAST_ROWS = 4;

    private EarthOrientationFile() {
    }

    static SortedSet<EOPEntry> read(Path file) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new IOException(file + " is larger than any Earth orientation file (20 MB)");
        }
        SortedSet<EOPEntry> entries = new TreeSet<>(Comparator.comparingInt(EOPEntry::getMjd));
        try {
            entries.addAll(parse(bytes, file.toString()));
        } catch (OrekitException | NumberFormatException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException(refusal(file, e.getMessage()), e);
        }
        if (entries.size() < LEAST_ROWS) {
            throw new IllegalArgumentException(refusal(file, "it holds " + entries.size() + " days"));
        }
        return entries;
    }

    private static Collection<EOPEntry> parse(byte[] bytes, String name) throws IOException {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        context.getTimeScales().addUTCTAIOffsetsLoader(LeapSeconds::offsets);
        // The realisation of the frame moves a place by centimetres at most: one name serves all.
        ItrfVersionProvider newest = (any, mjd) -> new ITRFVersionConfiguration("", ITRFVersion.ITRF_2020,
                Integer.MIN_VALUE, Integer.MAX_VALUE);
        EopHistoryLoader.Parser parser = isFinals(bytes)
                ? EopHistoryLoader.Parser.newFinalsColumnsParser(IERSConventions.IERS_2010, newest,
                        context.getTimeScales(), true)
                : EopHistoryLoader.Parser.newEopC04Parser(IERSConventions.IERS_2010, newest, context.getTimeScales());
        return parser.parse(new ByteArrayInputStream(bytes), name);
    }

    /** Rows of finals2000A have the modified Julian day in columns 8 to 15 with two decimals. */
    private static boolean isFinals(byte[] bytes) {
        return bytes.length > 12 && bytes[12] == '.';
    }

    private static String refusal(Path file, String reason) {
        return file + " cannot be read as Earth orientation data: " + reason
                + ". Take finals2000A.daily, finals2000A.all or eopc04 as the IERS publishes them.";
    }
}
