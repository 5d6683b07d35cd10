package org.straddle.terrain;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
    private final BufferedReader in;
    private long words;
    private int line = 1;

    private ArcGridText(Path file, BufferedReader in) {
        this.file = file;
        this.in = in;
    }

    /**
     * @return the number that marks a void
     * @throws TerrainException when the header is wrong, the raster too large, or numbers are missing or none
     */
    static double check(Path file) throws TerrainException {
        // Latin letters for every byte: the words of the format are ASCII, and anything else is told as it is.
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
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

    /** The next word; null at the end. */
    private String next() throws IOException {
        int c = in.read();
        while (c >= 0 && c <= ' ') {
            line += c == '\n' ? 1 : 0;
            c = in.read();
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
            c = in.read();
        }
        line += c == '\n' ? 1 : 0;
        return word.toString();
    }
}
