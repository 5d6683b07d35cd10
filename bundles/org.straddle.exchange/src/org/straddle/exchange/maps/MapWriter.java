package org.straddle.exchange.maps;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.straddle.exchange.FeatureCollection;
import org.straddle.exchange.GpxText;
import org.straddle.exchange.Waypoint;
import org.straddle.grid.MapFeature;
import org.straddle.grid.Trace;

import com.fasterxml.jackson.core.JsonGenerator;

/** Writes what {@link MapReader} reads, as text in UTF-8. */
public final class MapWriter {

    private MapWriter() {
    }

    /**
     * GPX 1.1: points as waypoints, lines as tracks with a segment for each part. GPX knows no areas: their rings
     * become tracks.
     */
    public static String gpx(List<MapFeature> features) {
        GpxText gpx = new GpxText();
        for (MapFeature feature : features) {
            if (feature.shape() == MapFeature.Shape.POINTS) {
                feature.parts().forEach(part -> part.positions().forEach(position -> gpx.waypoint("wpt",
                        new Waypoint(position, OptionalDouble.empty(), feature.name(), "", role(feature), Map.of()))));
            }
        }
        for (MapFeature feature : features) {
            if (feature.shape() != MapFeature.Shape.POINTS) {
                gpx.begin("trk");
                gpx.element("name", feature.name());
                gpx.element("type", role(feature));
                for (Trace part : feature.parts()) {
                    gpx.begin("trkseg");
                    part.positions().forEach(position -> gpx.point("trkpt", position));
                    gpx.finish();
                }
                gpx.finish();
            }
        }
        return gpx.text();
    }

    private static String role(MapFeature feature) {
        return feature.role().map(Object::toString).orElse("");
    }

    /**
     * A FeatureCollection of RFC 7946. Rings of an area go out as polygons of their own when there are several: which
     * of them are holes is not known here.
     */
    public static String geoJson(List<MapFeature> features) {
        return FeatureCollection.text(features, (json, feature) -> {
            json.writeObjectFieldStart("properties");
            json.writeStringField("name", feature.name());
            if (feature.role().isPresent()) {
                json.writeStringField("role", role(feature));
            }
            json.writeEndObject();
            json.writeFieldName("geometry");
            geometry(json, feature);
        });
    }

    private static void geometry(JsonGenerator json, MapFeature feature) throws IOException {
        String type = switch (feature.shape()) {
            case POINTS -> "MultiPoint";
            case LINES -> "MultiLineString";
            case AREA -> "MultiPolygon";
        };
        json.writeStartObject();
        json.writeStringField("type", type);
        json.writeArrayFieldStart("coordinates");
        for (Trace part : feature.parts()) {
            if (feature.shape() == MapFeature.Shape.POINTS) {
                positions(json, part);
                continue;
            }
            json.writeStartArray();
            if (feature.shape() == MapFeature.Shape.AREA) {
                json.writeStartArray();
                positions(json, part);
                json.writeEndArray();
            } else {
                positions(json, part);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void positions(JsonGenerator json, Trace part) throws IOException {
        for (int i = 0; i < part.size(); i++) {
            json.writeStartArray();
            json.writeNumber(GpxText.degrees(part.longitudeDeg(i)));
            json.writeNumber(GpxText.degrees(part.latitudeDeg(i)));
            json.writeEndArray();
        }
    }
}
