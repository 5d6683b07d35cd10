package org.straddle.exchange.elements;

import java.time.Instant;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.words.Catalogue;

/**
 * One orbit mean-elements message as keywords and values, in whichever of its written forms it came. Its meaning is
 * that of CCSDS 502.0-B-3, section 4.2, narrowed to what SGP4 takes (4.2.4.6 there): centre EARTH, frame TEME, time
 * UTC, mean motion. Anything else is refused, because SGP4 would go on and give positions that are quietly wrong.
 */
final class OmmMessage {

    private static final Catalogue TEXTS = Catalogue.of(OmmMessage.class);

    private record Field(String text, int line) {
    }

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");
    private static final Set<String> REPEATABLE = Set.of("COMMENT", "USER_DEFINED");
    private static final String OTHER_SOURCE = TEXTS.text("ommMessage.fetchElementsSgp");
    private static final String FETCH_AGAIN = TEXTS.text("ommMessage.fetchFileAgain");

    private final SourceFile source;
    private final int line;
    /** Does every message have to say its frame, time system and theory? The short forms in public use never do. */
    private final boolean sayingAll;
    private final Map<String, Field> fields = new HashMap<>();

    /** @param line where the message begins */
    OmmMessage(SourceFile source, int line, boolean sayingAll) {
        this.source = source;
        this.line = line;
        this.sayingAll = sayingAll;
    }

    int line() {
        return line;
    }

    /**
     * @param text an empty one counts as not given
     * @param unit as written, without brackets; empty when none is
     */
    void put(String keyword, String text, String unit, int at) throws ReadException {
        String value = text.strip();
        if (value.isEmpty() || REPEATABLE.contains(keyword) || keyword.startsWith("USER_DEFINED_")) {
            return;
        }
        if (!unit.isBlank() && !OmmUnits.isRight(keyword, unit.strip())) {
            throw source.refuse(at, TEXTS.text("ommMessage.whichNotIts", "keyword", keyword,
                    "unit", unit.strip()), FETCH_AGAIN);
        }
        if (fields.putIfAbsent(keyword, new Field(value, at)) != null) {
            throw source.refuse(at, TEXTS.text("ommMessage.givenTwiceOne", "keyword", keyword), FETCH_AGAIN);
        }
    }

    String originator() {
        return text("ORIGINATOR");
    }

    ElementSet toElementSet() throws ReadException {
        requireValue("CENTER_NAME", Set.of("EARTH"), TEXTS.text("ommMessage.centre"));
        requireValue("REF_FRAME", Set.of("TEME"), TEXTS.text("ommMessage.frame"));
        requireValue("TIME_SYSTEM", Set.of("UTC"), TEXTS.text("ommMessage.timeSystem"));
        requireValue("MEAN_ELEMENT_THEORY", Set.of("SGP4", "SGP/SGP4"), TEXTS.text("ommMessage.theory"));
        requireSgp4Drag();
        try {
            return new ElementSet(text("OBJECT_NAME"), whole(required("NORAD_CAT_ID"), "NORAD_CAT_ID"), designator(),
                    epoch(), number("MEAN_MOTION"), number("ECCENTRICITY"), number("INCLINATION"),
                    angle("RA_OF_ASC_NODE"), angle("ARG_OF_PERICENTER"), angle("MEAN_ANOMALY"), number("BSTAR"),
                    optional("MEAN_MOTION_DOT"), optional("MEAN_MOTION_DDOT"), optionalWhole("ELEMENT_SET_NO"),
                    optionalWhole("REV_AT_EPOCH"));
        } catch (ElementSetException e) {
            throw source.refuse(line, e.getMessage(), FETCH_AGAIN);
        }
    }

    private void requireValue(String keyword, Set<String> allowed, String what) throws ReadException {
        if (sayingAll) {
            required(keyword);
        }
        refuseOther(keyword, allowed, what);
    }

    private void refuseOther(String keyword, Set<String> allowed, String what) throws ReadException {
        Field field = fields.get(keyword);
        if (field != null && !allowed.contains(field.text().toUpperCase(Locale.ROOT))) {
            throw source.refuse(field.line(), TEXTS.text("ommMessage.not", "what", what, "field", field.text(),
                    "keyword", keyword, "sorted", String.join(
                    TEXTS.text("ommMessage.or"), allowed.stream().sorted().toList())), OTHER_SOURCE);
        }
    }

    /** Other theories of the same family show by their ephemeris type or by their own drag terms (table 4-3). */
    private void requireSgp4Drag() throws ReadException {
        refuseOther("EPHEMERIS_TYPE", Set.of("0", "2"), TEXTS.text("ommMessage.ephemerisType"));
        for (String other : new String[] {"BTERM", "AGOM"}) {
            if (fields.containsKey(other)) {
                throw source.refuse(fields.get(other).line(), TEXTS.text("ommMessage.elementsSgpXp",
                        "other", other), OTHER_SOURCE);
            }
        }
        if (!fields.containsKey("MEAN_MOTION") && fields.containsKey("SEMI_MAJOR_AXIS")) {
            throw source.refuse(fields.get("SEMI_MAJOR_AXIS").line(),
                    TEXTS.text("ommMessage.messageGivesSemi"), OTHER_SOURCE);
        }
    }

    private String text(String keyword) {
        Field field = fields.get(keyword);
        return field == null ? "" : field.text();
    }

    private String designator() {
        String id = text("OBJECT_ID");
        return id.equalsIgnoreCase("UNKNOWN") ? "" : id;
    }

    private Instant epoch() throws ReadException {
        Field field = required("EPOCH");
        return OmmTime.parse(field.text()).orElseThrow(() -> source.refuse(field.line(), TEXTS.text("ommMessage.epochNotTime", "field", field.text()), FETCH_AGAIN));
    }

    private double number(String keyword) throws ReadException {
        return number(required(keyword), keyword);
    }

    private double optional(String keyword) throws ReadException {
        Field field = fields.get(keyword);
        return field == null ? 0 : number(field, keyword);
    }

    private double angle(String keyword) throws ReadException {
        double degrees = number(keyword);
        return degrees >= 0 && degrees <= 360 ? degrees : (degrees % 360 + 360) % 360;
    }

    private double number(Field field, String keyword) throws ReadException {
        if (!NUMBER.matcher(field.text()).matches()) {
            throw source.refuse(field.line(), TEXTS.text("ommMessage.notNumber", "keyword", keyword,
                    "field", field.text()), FETCH_AGAIN);
        }
        return Double.parseDouble(field.text());
    }

    private int optionalWhole(String keyword) throws ReadException {
        Field field = fields.get(keyword);
        return field == null ? 0 : whole(field, keyword);
    }

    private int whole(Field field, String keyword) throws ReadException {
        if (!WHOLE.matcher(field.text()).matches()) {
            throw source.refuse(field.line(), TEXTS.text("ommMessage.notWholeNumber", "keyword", keyword,
                    "field", field.text()), FETCH_AGAIN);
        }
        return Integer.parseInt(field.text());
    }

    private Field required(String keyword) throws ReadException {
        Field field = fields.get(keyword);
        if (field == null) {
            throw source.refuse(line, TEXTS.text("ommMessage.messageBeginsHere", "keyword", keyword), FETCH_AGAIN);
        }
        return field;
    }
}
