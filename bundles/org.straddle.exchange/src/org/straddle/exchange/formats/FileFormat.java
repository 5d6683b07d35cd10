package org.straddle.exchange.formats;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.straddle.sky.prediction.EarthOrientation;

/**
 * The formats that files may be brought in, each with how to know it, what to call it, and what it is for. Content
 * decides; names and endings lie. The {@link Purpose} says who reads it.
 */
public enum FileFormat {

    /** GPX 1.1 and 1.0. */
    GPX("GPX", Syntax.XML, Marks.GPX.asPredicate(), List.of("gpx"), Purpose.SITES, Purpose.LAYER, Purpose.FIXES),
    /** CCSDS 502.0, orbit mean-elements message in XML. */
    OMM_XML("OMM", Syntax.XML, text -> true, List.of("xml"), Purpose.ELEMENTS),
    /** RFC 7946. */
    GEOJSON("GeoJSON", Syntax.JSON, Marks.GEOJSON.asPredicate(), List.of("geojson", "json"), Purpose.SITES, Purpose.LAYER),
    /** The words of CCSDS 502.0 in JSON. */
    OMM_JSON("OMM", Syntax.JSON, text -> true, List.of("json"), Purpose.ELEMENTS),
    /** CCSDS 502.0, orbit mean-elements message, keyword = value. */
    OMM_KVN("OMM", Syntax.LINES, text -> Marks.KVN.matcher(text).lookingAt(), List.of("omm", "kvn"), Purpose.ELEMENTS),
    /** The words of CCSDS 502.0 as the heading of a table. */
    OMM_CSV("OMM", Syntax.LINES, Marks::isElementTable, List.of("csv"), Purpose.ELEMENTS),
    /** Earth orientation as the IERS publishes it, fast (finals2000A) or final (eopc04). */
    EARTH_ORIENTATION("finals2000A/eopc04", Syntax.LINES,
            text -> EarthOrientation.kind(text.getBytes(StandardCharsets.ISO_8859_1)).isPresent(), List.of("txt"),
            Purpose.ORIENTATION),
    /** Two lines a set, or three with a name. */
    TLE("TLE", Syntax.LINES, Marks.ELEMENT_LINE.asPredicate(), List.of("tle", "txt"), Purpose.ELEMENTS),
    /** NMEA 0183 sentences of a receiver. */
    NMEA("NMEA 0183", Syntax.LINES, text -> text.startsWith("$"), List.of("nmea", "log", "txt"), Purpose.FIXES),
    /** RFC 4180, with a first line that names the columns. */
    TABLE("CSV", Syntax.LINES, Marks::isTable, List.of("csv", "tsv", "txt"), Purpose.SITES);

    /** What the first character says. */
    private enum Syntax {
        XML, JSON, LINES;

        static Syntax of(String text) {
            return text.startsWith("<") ? XML : text.startsWith("{") || text.startsWith("[") ? JSON : LINES;
        }
    }

    private final String label;
    private final Syntax syntax;
    private final Predicate<String> mark;
    private final List<String> endings;
    private final Set<Purpose> purposes;

    FileFormat(String label, Syntax syntax, Predicate<String> mark, List<String> endings, Purpose... purposes) {
        this.label = label;
        this.syntax = syntax;
        this.mark = mark;
        this.endings = endings;
        this.purposes = Set.of(purposes);
    }

    /** What people call it. */
    public String label() {
        return label;
    }

    /** How names of such files usually end, without the dot. */
    public List<String> endings() {
        return endings;
    }

    public Set<Purpose> purposes() {
        return purposes;
    }

    /**
     * What a file seems to be, whatever it is for.
     *
     * @param text its first part, or all of it
     */
    public static Optional<FileFormat> of(String text) {
        String start = start(text);
        return Stream.of(values()).filter(format -> format.syntax == Syntax.of(start) && format.mark.test(start)).findFirst();
    }

    /**
     * What a file is when it is brought in for one purpose: of XML and JSON its reader then says what is wrong with them.
     *
     * @param text all of the file
     */
    public static Optional<FileFormat> of(String text, Purpose purpose) {
        String start = start(text);
        Syntax syntax = Syntax.of(start);
        return purpose.formats().stream().filter(format -> format.syntax == syntax)
                .filter(format -> syntax != Syntax.LINES || format.mark.test(start)).findFirst();
    }

    private static String start(String text) {
        return (text.startsWith("\uFEFF") ? text.substring(1) : text).stripLeading();
    }

    /** How formats are known; a class of its own, because constants of an enum come before its fields. */
    private static final class Marks {

        static final Pattern GPX = Pattern.compile("<(\\w+:)?gpx\\b");
        static final Pattern GEOJSON = Pattern.compile("\"(FeatureCollection|Feature|geometry|coordinates)\"");
        static final Pattern KVN = Pattern.compile("(?:COMMENT\\b[^\\n]*\\n\\s*)*CCSDS_[A-Z]+_VERS\\s*=");
        static final Pattern ELEMENT_LINE = Pattern.compile("(?m)^[12] [ 0-9A-Z]{5}[ A-Z]? ");
        static final Pattern ELEMENT_WORDS =
                Pattern.compile("(?i)MEAN_MOTION|NORAD_CAT_ID|CCSDS_OMM_VERS|(?m)^[12] [ \\dA-Z]{5}");

        static boolean isElementTable(String text) {
            String header = first(text);
            return header.contains(",") && header.contains("NORAD_CAT_ID") && header.contains("EPOCH");
        }

        static boolean isTable(String text) {
            String header = first(text);
            return !header.startsWith("#") && header.matches(".*[,;\\t].*")
                    && header.chars().noneMatch(c -> c == 0) && !ELEMENT_WORDS.matcher(text).find();
        }

        private static String first(String text) {
            return text.lines().findFirst().orElse("");
        }
    }
}
