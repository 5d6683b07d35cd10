package org.straddle.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/**
 * What must hold before an ArcGrid text file is given to the reader, which takes missing numbers for zeros and knows
 * no limits.
 */
final class ArcGridText {

    private static final Catalogue TEXTS = Catalogue.of(ArcGridText.class);

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,15}\\.?\\d{0,30}|\\.\\d{1,30})([eE][+-]?\\d{1,3})?");
    private static final String AGAIN = TEXTS.text("arcGridText.fetchAgainFrom");
    /** What the format takes for a void when the header does not say. */
    private static final double USUAL_VOID = -9999;
    private static final int LONGEST_WORD = 64;

    private final Path file;
    private final InputStream in;
    private final byte[] read = new byte[1 << 16];
    private int at;
    private int end;
    private long words;
    private int line = 1;

    private ArcGridText(Path file, InputStream in) {
        this.file = file;
        this.in = in;
    }

    /**
     * @return the number that marks a void
     * @throws TerrainException when the header is wrong, the raster too large, or numbers are missing or none
     */
    static double check(Path file) throws TerrainException {
        // Latin letters for every byte: the words of the format are ASCII, and anything else is told as it is.
        try (InputStream in = Files.newInputStream(file)) {
            return new ArcGridText(file, in).check();
        } catch (TerrainException e) {
            throw e;
        } catch (IOException e) {
            throw RasterFormat.unreadable(file, e);
        }
    }

    private double check() throws IOException {
        Map<String, Double> header = new HashMap<>();
        String word = next();
        while (word != null && Character.isLetter(word.charAt(0)) && !word.equalsIgnoreCase("nan")) {
            header.put(word.toLowerCase(Locale.ROOT), number(next()));
            word = next();
        }
        double columns = needed(header, "ncols");
        double rows = needed(header, "nrows");
        double cell = needed(header, "cellsize");
        if (!(columns >= 2 && rows >= 2 && columns == Math.rint(columns) && rows == Math.rint(rows) && cell > 0)) {
            throw new TerrainException(file, TEXTS.text("arcGridText.itsHeaderHas", "columns", columns, "rows", rows,
                    "cell", cell), AGAIN);
        }
        if (columns * rows > ElevationRaster.MOST_TEXT_CELLS) {
            throw new TerrainException(file, TEXTS.text("arcGridText.hasMoreThan",
                    "mostTextCells", ElevationRaster.MOST_TEXT_CELLS / 1_000_000), TEXTS.text("arcGridText.convertGeotiffCut"));
        }
        for (words = 0; word != null; words++) {
            if (!word.equalsIgnoreCase("nan")) {
                number(word);
            }
            word = next();
        }
        if (words != (long) (columns * rows)) {
            throw new TerrainException(file, TEXTS.text("arcGridText.shouldHoldHeights",
                    "columns", (long) (columns * rows), "words", words), AGAIN);
        }
        return header.getOrDefault("nodata_value", USUAL_VOID);
    }

    private double needed(Map<String, Double> header, String name) throws TerrainException {
        Double value = header.get(name);
        if (value == null) {
            throw new TerrainException(file, TEXTS.text("arcGridText.headerLacks", "name", name), AGAIN);
        }
        return value;
    }

    private double number(String word) throws TerrainException {
        if (word == null || !NUMBER.matcher(word).matches()) {
            throw new TerrainException(file, TEXTS.text("arcGridText.lineNotNumber", "line", line, "word", word), AGAIN);
        }
        return Double.parseDouble(word);
    }

    /** −1 at the end. Millions are asked for: a reader would lock and decode each. */
    private int letter() throws IOException {
        if (at == end) {
            at = 0;
            end = in.read(read);
            if (end <= 0) {
                end = 0;
                return -1;
            }
        }
        return read[at++] & 0xFF;
    }

    /** The next word; null at the end. */
    private String next() throws IOException {
        int c = letter();
        while (c >= 0 && c <= ' ') {
            line += c == '\n' ? 1 : 0;
            c = letter();
        }
        if (c < 0) {
            return null;
        }
        StringBuilder word = new StringBuilder();
        while (c > ' ') {
            if (word.length() > LONGEST_WORD) {
                throw new TerrainException(file, TEXTS.text("arcGridText.lineNotText", "line", line), AGAIN);
            }
            word.append((char) c);
            c = letter();
        }
        line += c == '\n' ? 1 : 0;
        return word.toString();
    }
}
