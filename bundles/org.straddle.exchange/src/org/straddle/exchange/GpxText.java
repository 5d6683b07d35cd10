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

    private final XmlText xml =
            new XmlText("gpx", "version", "1.1", "creator", "Straddle", "xmlns", "http://www.topografix.com/GPX/1/1");

    /** A point with what it says of itself, in the order of the schema: height, name, description, type. */
    public void waypoint(String tag, Waypoint waypoint) {
        xml.begin(tag, attributes(waypoint.position()));
        waypoint.altitudeM().ifPresent(altitudeM -> element("ele", plain(altitudeM)));
        element("name", waypoint.name());
        element("desc", waypoint.description());
        element("type", waypoint.type());
        xml.finish();
    }

    public void point(String tag, GeoPosition position) {
        xml.empty(tag, attributes(position));
    }

    public void begin(String tag) {
        xml.begin(tag);
    }

    /** Ends what {@link #begin} began. */
    public void finish() {
        xml.finish();
    }

    /** Nothing for an empty value. */
    public void element(String name, String value) {
        if (!value.isEmpty()) {
            xml.element(name, storable(value));
        }
    }

    /** The whole; call it once. */
    public String text() {
        return xml.text();
    }

    private static String[] attributes(GeoPosition position) {
        return new String[] {"lat", degrees(position.latitudeDeg()), "lon", longitude(position)};
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

    /** Characters that XML 1.0 section 2.2 lacks are written out, which {@link #read} undoes. */
    private static String storable(String text) {
        String written = InertText.reversible(text, REFERRED);
        return written.indexOf(0xFFFE) < 0 && written.indexOf(0xFFFF) < 0 ? written
                : written.replace("\uFFFE", InertText.code(0xFFFE)).replace("\uFFFF", InertText.code(0xFFFF));
    }

    /** The text of an element, whoever wrote it. */
    public static String read(String text) {
        return InertText.restored(text);
    }
}
