package org.straddle.exchange.elements;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.straddle.exchange.XmlText;
import org.straddle.sky.ElementSet;

/** Writes element sets as text that other programs read; lines end with a line feed. */
public final class ElementWriter {

    private ElementWriter() {
    }

    /**
     * Name and two lines for each set.
     *
     * @throws org.straddle.sky.ElementSetException when a set has no room in that format, such as a catalogue number
     *                                              above 339 999
     */
    public static String tle(List<ElementSet> sets) {
        return sets.stream().map(set -> oneLine(set.label()) + "\n" + String.join("\n", set.toTleLines()) + "\n")
                .collect(Collectors.joining());
    }

    /**
     * Messages of CCSDS 502.0-B-3 as keyword = value, one after the other.
     *
     * @param originator who makes the message
     * @param created    UTC
     */
    public static String ommKvn(List<ElementSet> sets, String originator, Instant created) {
        return sets.stream().map(set -> OmmKvn.VERSION + " = 3.0\n" + lines(header(originator, created)) + lines(metadata(set))
                + lines(elements(set)) + lines(tleRelated(set))).collect(Collectors.joining("\n"));
    }

    /** Messages of CCSDS 502.0-B-3 as XML in one {@code ndm}; parameters as for {@link #ommKvn}. */
    public static String ommXml(List<ElementSet> sets, String originator, Instant created) {
        XmlText xml = new XmlText("ndm");
        for (ElementSet set : sets) {
            xml.begin("omm", "id", OmmKvn.VERSION, "version", "3.0");
            section(xml, "header", header(originator, created));
            xml.begin("body");
            xml.begin("segment");
            section(xml, "metadata", metadata(set));
            xml.begin("data");
            section(xml, "meanElements", elements(set));
            section(xml, "tleParameters", tleRelated(set));
            xml.finish();
            xml.finish();
            xml.finish();
            xml.finish();
        }
        return xml.text();
    }

    private static void section(XmlText xml, String name, Map<String, Object> fields) {
        xml.begin(name);
        fields.forEach((field, value) -> xml.element(field, value.toString()));
        xml.finish();
    }

    private static Map<String, Object> header(String originator, Instant created) {
        return inOrder("CREATION_DATE", OmmTime.print(created), "ORIGINATOR", oneLine(originator));
    }

    private static Map<String, Object> metadata(ElementSet set) {
        String id = oneLine(set.internationalDesignator());
        return inOrder("OBJECT_NAME", oneLine(set.label()), "OBJECT_ID", id.isEmpty() ? "UNKNOWN" : id, "CENTER_NAME",
                "EARTH", "REF_FRAME", "TEME", "TIME_SYSTEM", "UTC", "MEAN_ELEMENT_THEORY", "SGP4");
    }

    private static Map<String, Object> elements(ElementSet set) {
        return inOrder("EPOCH", OmmTime.print(set.epoch()), "MEAN_MOTION", set.meanMotionRevPerDay(), "ECCENTRICITY",
                set.eccentricity(), "INCLINATION", set.inclinationDeg(), "RA_OF_ASC_NODE", set.raanDeg(),
                "ARG_OF_PERICENTER", set.argumentOfPerigeeDeg(), "MEAN_ANOMALY", set.meanAnomalyDeg());
    }

    private static Map<String, Object> tleRelated(ElementSet set) {
        return inOrder("EPHEMERIS_TYPE", 0, "CLASSIFICATION_TYPE", "U", "NORAD_CAT_ID", set.catalogueNumber(),
                "ELEMENT_SET_NO", set.elementSetNumber(), "REV_AT_EPOCH", set.revolutionAtEpoch(), "BSTAR", set.bstar(),
                "MEAN_MOTION_DOT", set.meanMotionDot(), "MEAN_MOTION_DDOT", set.meanMotionDdot());
    }

    private static Map<String, Object> inOrder(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }

    private static String lines(Map<String, Object> fields) {
        return fields.entrySet().stream().map(each -> each.getKey() + " = " + each.getValue() + "\n")
                .collect(Collectors.joining());
    }

    /** A line break within a name would begin a line of its own. */
    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
    }
}
