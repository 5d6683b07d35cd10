package org.straddle.exchange;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;

/** Writes waypoints as text in UTF-8 that other programs read; lines end with a line feed. */
public final class WaypointWriter {

    /** One centimetre; presence is argued in metres. */
    private static final int DECIMALS = 7;

    private WaypointWriter() {
    }

    /** GPX 1.1. Its schema fixes the order: height, name, description, type. */
    public static String gpx(List<Waypoint> waypoints) {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<gpx version=\"1.1\" creator=\"Straddle\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n");
        for (Waypoint waypoint : waypoints) {
            xml.append("  <wpt lat=\"").append(degrees(waypoint.position().latitudeDeg())).append("\" lon=\"")
                    .append(longitude(waypoint)).append("\">\n");
            waypoint.altitudeM().ifPresent(altitudeM -> element(xml, "ele", plain(altitudeM)));
            element(xml, "name", waypoint.name());
            element(xml, "desc", waypoint.description());
            element(xml, "type", waypoint.type());
            xml.append("  </wpt>\n");
        }
        return xml.append("</gpx>\n").toString();
    }

    private static void element(StringBuilder xml, String name, String value) {
        if (!value.isEmpty()) {
            xml.append("    <").append(name).append('>').append(escaped(value)).append("</").append(name).append(">\n");
        }
    }

    /** What XML 1.0 section 2.2 has no characters for becomes a blank. */
    private static String escaped(String text) {
        return text.replaceAll("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", " ").replace("&", "&amp;")
                .replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A FeatureCollection of RFC 7946 with a Point each. */
    public static String geoJson(List<Waypoint> waypoints) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("type", "FeatureCollection");
            json.writeArrayFieldStart("features");
            for (Waypoint waypoint : waypoints) {
                json.writeRaw("\n");
                json.writeStartObject();
                json.writeStringField("type", "Feature");
                json.writeObjectFieldStart("geometry");
                json.writeStringField("type", "Point");
                json.writeArrayFieldStart("coordinates");
                json.writeNumber(longitude(waypoint));
                json.writeNumber(degrees(waypoint.position().latitudeDeg()));
                if (waypoint.altitudeM().isPresent()) {
                    json.writeNumber(plain(waypoint.altitudeM().getAsDouble()));
                }
                json.writeEndArray();
                json.writeEndObject();
                json.writeObjectFieldStart("properties");
                json.writeStringField("name", waypoint.name());
                if (waypoint.more().isEmpty()) {
                    json.writeStringField("description", waypoint.description());
                    json.writeStringField("type", waypoint.type());
                }
                for (Map.Entry<String, Object> property : waypoint.more().entrySet()) {
                    property(json, property.getKey(), property.getValue());
                }
                json.writeEndObject();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    private static void property(JsonGenerator json, String name, Object value) throws IOException {
        if (value instanceof Double number) {
            json.writeFieldName(name);
            json.writeNumber(plain(number));
        } else if (value instanceof Collection<?> list) {
            json.writeArrayFieldStart(name);
            for (Object each : list) {
                json.writeString(each.toString());
            }
            json.writeEndArray();
        } else {
            json.writeStringField(name, value.toString());
        }
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    private static String degrees(double degrees) {
        return new BigDecimal(degrees).setScale(DECIMALS, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** The schema of GPX ends below 180, to which a longitude may round up. */
    private static String longitude(Waypoint waypoint) {
        String degrees = degrees(waypoint.position().longitudeDeg());
        return degrees.startsWith("180") ? "-" + degrees : degrees;
    }
}
