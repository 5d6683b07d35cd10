package org.straddle.exchange.maps;

import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.straddle.exchange.GeoJsonReference;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.grid.MapRole;
import org.straddle.grid.Trace;
import org.straddle.words.Catalogue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.io.JsonEOFException;

/**
 * Features of RFC 7946, read as a stream: only what is kept of them is in memory. Members may come in any order, so
 * coordinates are read before it is known what they make up.
 *
 * <p>The property {@code name} (or else {@code ref}) names a feature, {@code role} says what it is; without a role
 * the tags by which open maps mark roads, power lines, railways, buildings and quarries are understood.
 */
final class GeoJsonMap {

    private static final Catalogue TEXTS = Catalogue.of(GeoJsonMap.class);

    private static final JsonFactory JSON = JsonFactory.builder().streamReadConstraints(StreamReadConstraints.builder()
            .maxNestingDepth(200).maxStringLength(100_000).maxNameLength(10_000).maxNumberLength(1_000).build()).build();

    /** What an object without any coordinates counts for. */
    private static final int AS_POSITIONS = 8;

    private static final int LONGEST_NAME = 200;

    private static final String AGAIN = TEXTS.text("geoJsonMap.fetchFileAgain");
    private static final Set<String> TELLING = Set.of("name", "ref", "role", "highway", "power", "railway", "building", "landuse");

    /** Members of one GeoJSON object, whichever it turns out to be. */
    private static final class Members {

        private final int line;
        private String type;
        private Coordinates coordinates;
        private Members geometry;
        private List<Members> geometries;
        private boolean features;
        private Map<String, String> properties = Map.of();

        Members(int line) {
            this.line = line;
        }
    }

    /**
     * An array of coordinates with its inner arrays laid out flat.
     *
     * @param depth how many arrays are within each other: 1 for a position, 0 for an empty array
     */
    private record Coordinates(int depth, List<Trace> parts) {
    }

    private final MapSource source;
    private final JsonParser parser;
    private final MapContent content;

    private GeoJsonMap(MapSource source, JsonParser parser, MapContent content) {
        this.source = source;
        this.parser = parser;
        this.content = content;
    }

    static void read(MapSource source, InputStream in, MapContent content) throws IOException {
        try (JsonParser parser = JSON.createParser(in)) {
            new GeoJsonMap(source, parser, content).readAll();
        } catch (JsonEOFException e) {
            throw new ReadException(source.name(), Math.max(0, e.getLocation().getLineNr()),
                    TEXTS.text("geoJsonMap.geojsonBreaksOff"), AGAIN, e);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            throw new ReadException(source.name(), line, TEXTS.text("geoJsonMap.notWellFormed",
                    "originalMessage", e.getOriginalMessage()), AGAIN, e);
        } catch (CharConversionException e) {
            throw new ReadException(source.name(), 0, TEXTS.text("geoJsonMap.notTextNot"), MapSource.RIGHT_FILE, e);
        }
    }

    private void readAll() throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw refuse(TEXTS.text("geoJsonMap.geojsonObjectBraces"));
        }
        Members root = object();
        if (root.type == null) {
            throw source.refuse(root.line, TEXTS.text("geoJsonMap.jsonHasType"), MapSource.RIGHT_FILE);
        }
        if (root.type.equals("FeatureCollection")) {
            if (!root.features) {
                throw source.refuse(root.line, TEXTS.text("geoJsonMap.featurecollectionWithoutFeatures"), AGAIN);
            }
        } else if (root.type.equals("Feature")) {
            feature(root);
        } else {
            geometry(root, "", Optional.empty());
        }
        if (parser.nextToken() != null) {
            throw source.refuse(line(), TEXTS.text("geoJsonMap.somethingFollowsEnd"), TEXTS.text("geoJsonMap.putAllFeatures"));
        }
    }

    private Members object() throws IOException {
        Members members = new Members(line());
        content.weigh(AS_POSITIONS, members.line);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String member = parser.currentName();
            JsonToken value = parser.nextToken();
            switch (member) {
                case "type" -> members.type = value == JsonToken.VALUE_STRING ? parser.getText() : null;
                case "coordinates" -> members.coordinates = value == JsonToken.VALUE_NULL ? null : array(member, 1);
                case "geometry" -> members.geometry = value == JsonToken.VALUE_NULL ? null : object(member);
                case "geometries" -> members.geometries = objects(member);
                case "features" -> {
                    members.features = true;
                    features();
                }
                case "properties" -> members.properties = properties();
                case "crs" -> GeoJsonReference.requireDegrees(parser, source);
                default -> parser.skipChildren();
            }
        }
        return members;
    }

    private Members object(String member) throws IOException {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            throw refuse(TEXTS.text("geoJsonMap.shouldObjectBraces", "member", member));
        }
        return object();
    }

    private List<Members> objects(String member) throws IOException {
        requireArray(member);
        List<Members> all = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            all.add(object(member));
        }
        return all;
    }

    private void features() throws IOException {
        requireArray("features");
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            Members members = object(TEXTS.text("geoJsonMap.feature"));
            if (!"Feature".equals(members.type)) {
                throw source.refuse(members.line, TEXTS.text("geoJsonMap.featureHasType", "type", members.type), AGAIN);
            }
            feature(members);
        }
    }

    private void requireArray(String member) throws IOException {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            throw refuse(TEXTS.text("geoJsonMap.shouldArrayBrackets", "member", member));
        }
    }

    private Map<String, String> properties() throws IOException {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            parser.skipChildren();
            return Map.of();
        }
        Map<String, String> telling = new HashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonToken value = parser.nextToken();
            if (value.isScalarValue() && value != JsonToken.VALUE_NULL && TELLING.contains(key)) {
                String text = parser.getText().replaceAll("\\s+", " ").strip();
                telling.put(key, text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME) : text);
            } else {
                parser.skipChildren();
            }
        }
        return telling;
    }

    /** An array of coordinates whose opening bracket is the current token. */
    private Coordinates array(String member, int nested) throws IOException {
        requireArray(member);
        if (nested > 4) {
            throw refuse(TEXTS.text("geoJsonMap.coordinatesNestedDeeper"));
        }
        JsonToken first = parser.nextToken();
        if (first == JsonToken.END_ARRAY) {
            return new Coordinates(0, List.of());
        }
        if (first.isNumeric()) {
            Trace.Builder position = new Trace.Builder();
            position(position);
            return new Coordinates(1, List.of(position.build()));
        }
        List<Trace> parts = new ArrayList<>();
        Trace.Builder positions = null;
        int depth = 0;
        for (JsonToken token = first; token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            requireArray(TEXTS.text("geoJsonMap.elementCoordinates"));
            if (positions != null) {
                if (!parser.nextToken().isNumeric()) {
                    throw refuse(TEXTS.text("geoJsonMap.positionShouldTwo"));
                }
                position(positions);
                continue;
            }
            Coordinates element = array(member, nested + 1);
            if (element.depth == 1 && depth == 0 && parts.isEmpty()) {
                positions = new Trace.Builder();
                positions.add(element.parts.get(0).latitudeDeg(0), element.parts.get(0).longitudeDeg(0));
            } else if (element.depth == 1 || element.depth > 1 && depth > 0 && element.depth != depth) {
                throw refuse(TEXTS.text("geoJsonMap.coordinatesNestedUnevenly"));
            } else {
                depth = Math.max(depth, element.depth);
                content.weigh(AS_POSITIONS, line());
                parts.addAll(element.depth == 0 ? List.of(new Trace.Builder().build()) : element.parts);
            }
        }
        return positions != null ? new Coordinates(2, List.of(positions.build())) : new Coordinates(Math.max(2, depth) + 1, parts);
    }

    /** A position whose first number is the current token; height and more are passed over (section 3.1.1). */
    private void position(Trace.Builder positions) throws IOException {
        double longitude = parser.getDoubleValue();
        if (!parser.nextToken().isNumeric()) {
            throw refuse(TEXTS.text("geoJsonMap.positionShouldTwo"));
        }
        content.position(positions, parser.getDoubleValue(), longitude, 360, line());
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            if (!token.isScalarValue()) {
                throw refuse(TEXTS.text("geoJsonMap.positionShouldNumbers"));
            }
        }
    }

    private void feature(Members feature) throws ReadException {
        String name = feature.properties.getOrDefault("name", feature.properties.getOrDefault("ref", ""));
        if (feature.geometry == null) {
            content.remark(feature.line, TEXTS.text("geoJsonMap.featureHasGeometry",
                    "name", name.isEmpty() ? "" : " (" + name + ")"));
            return;
        }
        geometry(feature.geometry, name, role(feature));
    }

    private Optional<MapRole> role(Members feature) {
        Map<String, String> properties = feature.properties;
        String role = properties.get("role");
        if (role != null) {
            try {
                return Optional.of(new MapRole(role));
            } catch (IllegalArgumentException e) {
                content.remark(feature.line, e.getMessage());
                return Optional.empty();
            }
        }
        // Lamps and crossings beside a road carry its tag, too.
        if (properties.containsKey("highway") && !String.valueOf(feature.geometry.type).endsWith("Point")) {
            return Optional.of(MapRole.ROAD);
        }
        if (properties.containsKey("power")) {
            return Optional.of(MapRole.POWER_LINE);
        }
        if (properties.containsKey("railway")) {
            return Optional.of(MapRole.RAILWAY);
        }
        if (properties.containsKey("building")) {
            return Optional.of(MapRole.BUILDING);
        }
        return Optional.of(MapRole.QUARRY).filter(quarry -> quarry.name().equals(properties.get("landuse")));
    }

    private void geometry(Members geometry, String name, Optional<MapRole> role) throws ReadException {
        String type = String.valueOf(geometry.type);
        if (type.equals("GeometryCollection")) {
            for (Members part : geometry.geometries == null ? List.<Members>of() : geometry.geometries) {
                geometry(part, name, role);
            }
            return;
        }
        int depth = switch (type) {
            case "Point" -> 1;
            case "MultiPoint", "LineString" -> 2;
            case "MultiLineString", "Polygon" -> 3;
            case "MultiPolygon" -> 4;
            default -> throw source.refuse(geometry.line, TEXTS.text("geoJsonMap.notTypeGeojson",
                    "type", type.length() > 40 ? type.substring(0, 40) + "…" : type), MapSource.RIGHT_FILE);
        };
        if (geometry.coordinates == null) {
            throw source.refuse(geometry.line, TEXTS.text("geoJsonMap.withoutCoordinates", "type", type), AGAIN);
        }
        if (geometry.coordinates.depth != 0 && geometry.coordinates.depth != depth && !allEmpty(geometry.coordinates)) {
            throw source.refuse(geometry.line, TEXTS.text("geoJsonMap.coordinatesNotNested", "type", type), AGAIN);
        }
        List<Trace> parts = geometry.coordinates.parts;
        if (depth == 1 || type.equals("MultiPoint")) {
            if (parts.isEmpty()) {
                content.remark(geometry.line, TEXTS.text("geoJsonMap.emptyLeftOut", "type", type));
            }
            content.points(name, role, parts);
            return;
        }
        List<Trace> straight = new ArrayList<>();
        for (Trace part : parts) {
            straight.add(content.straightInDegrees(part, geometry.line));
        }
        if (type.endsWith("LineString")) {
            content.lines(name, role, straight, geometry.line);
        } else {
            content.area(name, role, straight, geometry.line);
        }
    }

    /** {@code [[], []]} shows no depth. */
    private static boolean allEmpty(Coordinates coordinates) {
        return coordinates.parts.stream().allMatch(part -> part.size() == 0);
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private ReadException refuse(String what) {
        return source.refuse(line(), what, AGAIN);
    }
}
