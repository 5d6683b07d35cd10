package org.straddle.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.straddle.grid.GeoPosition;
import org.straddle.model.InertText;

/** GPX 1.1 as it grows. The schema fixes the order of what is in it: waypoints, routes, tracks. */
public final class GpxText {

    /** One centimetre; presence is argued in metres. */
    private static final int DECIMALS = 7;

    /** Characters that act and that XML has: C1, separators, directions, and of C0 only ends of lines and tabs. */
    private static final String REFERRED = IntStream.rangeClosed(0, 0xFFFD).filter(InertText::acts)
            .filter(c -> c >= 0x7F && !Character.isSurrogate((char) c) || c == '\n' || c == '\t' || c == '\r')
            .mapToObj(Character::toString).collect(Collectors.joining());

    private final StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            + "<gpx version=\"1.1\" creator=\"Straddle\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n");
    private String indent = "  ";

    /** A point with what it says of itself, in the order of the schema: height, name, description, type. */
    public void waypoint(String tag, Waypoint waypoint) {
        xml.append(indent).append('<').append(tag).append(attributes(waypoint.position())).append(">\n");
        indent += "  ";
        waypoint.altitudeM().ifPresent(altitudeM -> element("ele", plain(altitudeM)));
        element("name", waypoint.name());
        element("desc", waypoint.description());
        element("type", waypoint.type());
        indent = indent.substring(2);
        end(tag);
    }

    public void point(String tag, GeoPosition position) {
        xml.append(indent).append('<').append(tag).append(attributes(position)).append("/>\n");
    }

    public void begin(String tag) {
        xml.append(indent).append('<').append(tag).append(">\n");
        indent += "  ";
    }

    /** Ends what {@link #begin} began. */
    public void finish(String tag) {
        indent = indent.substring(2);
        end(tag);
    }

    private void end(String tag) {
        xml.append(indent).append("</").append(tag).append(">\n");
    }

    /** Nothing for an empty value. */
    public void element(String name, String value) {
        if (!value.isEmpty()) {
            xml.append(indent).append('<').append(name).append('>').append(escaped(value)).append("</").append(name).append(">\n");
        }
    }

    /** The whole; call it once. */
    public String text() {
        return xml.append("</gpx>\n").toString();
    }

    private static String attributes(GeoPosition position) {
        return " lat=\"" + degrees(position.latitudeDeg()) + "\" lon=\"" + longitude(position) + "\"";
    }

    public static String degrees(double degrees) {
        return new BigDecimal(degrees).setScale(DECIMALS, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** The schema ends below 180, to which a longitude may round up. */
    public static String longitude(GeoPosition position) {
        String degrees = degrees(position.longitudeDeg());
        return degrees.startsWith("180") ? "-" + degrees : degrees;
    }

    /** All digits, no exponent. */
    public static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /**
     * What acts ({@link InertText}) becomes a reference to its character where XML 1.0 section 2.2 has it; else it is written
     * out, which {@link #read} undoes.
     */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        InertText.reversible(text, REFERRED).codePoints().forEach(character -> {
            if (character == '&' || character == '<' || character == '>') {
                escaped.append(character == '&' ? "&amp;" : character == '<' ? "&lt;" : "&gt;");
            } else if (character == 0xFFFE || character == 0xFFFF) {
                escaped.append(InertText.code(character));
            } else if (InertText.acts(character) && character != '\n' && character != '\t') {
                escaped.append("&#").append(character).append(';');
            } else {
                escaped.appendCodePoint(character);
            }
        });
        return escaped.toString();
    }

    /** The text of an element, whoever wrote it. */
    public static String read(String text) {
        return InertText.restored(text);
    }
}
