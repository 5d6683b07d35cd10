package org.straddle.exchange.maps;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import org.straddle.exchange.FeatureCollection;
import org.straddle.exchange.GpxText;
import org.straddle.exchange.Waypoint;

import com.fasterxml.jackson.core.JsonGenerator;

/** Writes waypoints as text in UTF-8 that other programs read; lines end with a line feed. */
public final class WaypointWriter {

    private WaypointWriter() {
    }

    /** Waypoints of GPX 1.1. */
    public static String gpx(List<Waypoint> waypoints) {
        GpxText gpx = new GpxText();
        waypoints.forEach(waypoint -> gpx.waypoint("wpt", waypoint));
        return gpx.text();
    }

    /** A route of GPX 1.1 that leads through the waypoints. */
    public static String gpxRoute(String name, List<Waypoint> waypoints) {
        GpxText gpx = new GpxText();
        gpx.begin("rte");
        gpx.element("name", name);
        waypoints.forEach(waypoint -> gpx.waypoint("rtept", waypoint));
        gpx.finish();
        return gpx.text();
    }

    /** A FeatureCollection of RFC 7946 with a Point each. */
    public static String geoJson(List<Waypoint> waypoints) {
        return FeatureCollection.text(waypoints, WaypointWriter::fields);
    }

    private static void fields(JsonGenerator json, Waypoint waypoint) throws IOException {
        json.writeObjectFieldStart("geometry");
        json.writeStringField("type", "Point");
        json.writeArrayFieldStart("coordinates");
        json.writeNumber(GpxText.longitude(waypoint.position()));
        json.writeNumber(GpxText.degrees(waypoint.position().latitudeDeg()));
        if (waypoint.altitudeM().isPresent()) {
            json.writeNumber(GpxText.plain(waypoint.altitudeM().getAsDouble()));
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
    }

    private static void property(JsonGenerator json, String name, Object value) throws IOException {
        if (value instanceof Double number) {
            json.writeFieldName(name);
            json.writeNumber(GpxText.plain(number));
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
}
