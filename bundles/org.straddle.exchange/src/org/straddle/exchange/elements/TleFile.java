package org.straddle.exchange.elements;

import java.util.ArrayList;
import java.util.List;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.words.Catalogue;

/**
 * Files of two-line element sets, with or without a line for the name before each, with blank lines and lines of
 * comment that begin with #.
 */
final class TleFile {

    private static final Catalogue TEXTS = Catalogue.of(TleFile.class);

    private static final String FETCH_AGAIN = TEXTS.text("tleFile.fetchFileAgain");
    /** Names are up to 24 characters: what begins like a first line but is no longer is a name. */
    private static final int LONGEST_NAME = 24;
    /** Column of the ephemeris type: 0 or 2 for SGP4, other digits for other theories (CCSDS 502.0-B-3, 4.2.4.7). */
    private static final int EPHEMERIS_TYPE = 62;

    private record Numbered(int number, String text) {

        boolean isFirst() {
            return text.startsWith("1 ") && text.length() > LONGEST_NAME;
        }

        boolean isSecond() {
            return text.startsWith("2 ");
        }
    }

    private final SourceFile source;
    private final List<Numbered> lines;
    private final List<ElementSet> sets = new ArrayList<>();
    private int next;

    private TleFile(SourceFile source, String text) {
        this.source = source;
        this.lines = significant(text);
    }

    static ElementFile read(SourceFile source, String text) throws ReadException {
        TleFile file = new TleFile(source, text);
        while (file.next < file.lines.size()) {
            file.readSet();
        }
        return new ElementFile(source, FileFormat.TLE, "", file.sets);
    }

    private static List<Numbered> significant(String text) {
        List<Numbered> lines = new ArrayList<>();
        int number = 0;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                lines.add(new Numbered(number, line.stripTrailing()));
            }
        }
        return lines;
    }

    private void readSet() throws ReadException {
        String name = "";
        Numbered line = lines.get(next);
        if (!line.isFirst()) {
            if (line.isSecond() && line.text().length() > LONGEST_NAME) {
                throw refuse(line, TEXTS.text("tleFile.secondLineWithout"));
            }
            name = line.text();
            next++;
            if (next == lines.size() || !lines.get(next).isFirst()) {
                throw refuse(line, TEXTS.text("tleFile.shouldNameTwo", "shortened", shortened(name)));
            }
            line = lines.get(next);
        }
        next++;
        if (next == lines.size() || !lines.get(next).isSecond()) {
            throw refuse(line, TEXTS.text("tleFile.secondLineFollows"));
        }
        Numbered second = lines.get(next++);
        sets.add(set(name, line, second));
    }

    private ElementSet set(String name, Numbered first, Numbered second) throws ReadException {
        ElementSet set;
        try {
            set = ElementSet.ofTle(name, first.text(), second.text());
        } catch (ElementSetException e) {
            throw refuse(e.getMessage().startsWith(TEXTS.text("tleFile.line")) ? second : first, e.getMessage());
        }
        char type = first.text().charAt(EPHEMERIS_TYPE);
        if (type != '0' && type != '2' && type != ' ') {
            throw source.refuse(first.number(), TEXTS.text("tleFile.setTheoryThan", "type", type,
                    "ephemerisType", (EPHEMERIS_TYPE + 1)), TEXTS.text("tleFile.fetchSetsSgp"));
        }
        return set;
    }

    private ReadException refuse(Numbered line, String what) {
        return source.refuse(line.number(), what, FETCH_AGAIN);
    }

    private static String shortened(String text) {
        return text.length() <= 30 ? text : text.substring(0, 30) + "…";
    }
}
