package org.straddle.exchange.sites;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.exchange.GeoJsonReference;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.words.Catalogue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;

/** Point features of RFC 7946 with their properties; a list among them is told with blanks between its values. */
final class GeoJsonTable {

    private static final Catalogue TEXTS = Catalogue.of(GeoJsonTable.class);

    private static final JsonFactory JSON = JsonFactory.builder().streamReadConstraints(StreamReadConstraints.builder()
            .maxNestingDepth(200).maxStringLength(100_000).maxNameLength(1_000).maxNumberLength(100).build()).build();
    private static final String AGAIN = TEXTS.text("geoJsonTable.fetchFileAgain");
    private static final String[] AXES = {SourceTable.LONGITUDE, SourceTable.LATITUDE, SourceTable.ALTITUDE};

    private final MapSource source;
    private final JsonParser parser;
    private final RowsOfNames rows;
    private int others;

    private GeoJsonTable(MapSource source, JsonParser parser) {
        this.source = source;
        this.parser = parser;
        this.rows = new RowsOfNames(source);
    }

    static SourceTable read(MapSource source, String text) throws ReadException {
        try (JsonParser parser = JSON.createParser(text)) {
            return new GeoJsonTable(source, parser).readAll();
        } catch (ReadException e) {
            throw e;
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            throw new ReadException(source.name(), line, TEXTS.text("geoJsonTable.notWellFormed",
                    "originalMessage", e.getOriginalMessage()), AGAIN, e);
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
    }

    private SourceTable readAll() throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw refuse(TEXTS.text("geoJsonTable.geojsonObjectBraces"), SourceTable.RIGHT_FILE);
        }
        Members root = object();
        if (!root.features) {
            if (!"Feature".equals(root.type)) {
                throw refuse(TEXTS.text("geoJsonTable.jsonHoldsFeatures"), SourceTable.RIGHT_FILE);
            }
            take(root);
        }
        if (parser.nextToken() != null) {
            throw refuse(TEXTS.text("geoJsonTable.somethingFollowsEnd"), TEXTS.text("geoJsonTable.putAllFeatures"));
        }
        return rows.toTable(others == 0 ? List.of() : List.of(TEXTS.text("geoJsonTable.noPoints", "others", others)));
    }

    /** Members of one object, whichever it turns out to be. */
    private static final class Members {

        private int line;
        private String type;
        private boolean features;
        private Members geometry;
        private List<String> numbers;
        private Map<String, String> properties = Map.of();
    }

    private Members object() throws IOException {
        Members members = new Members();
        members.line = line();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String member = parser.currentName();
            JsonToken value = parser.nextToken();
            switch (member) {
                case "type" -> members.type = value.isScalarValue() ? parser.getText() : skipped();
                case "features" -> {
                    members.features = true;
                    features(value);
                }
                case "geometry" -> members.geometry = value == JsonToken.START_OBJECT ? object() : null;
                case "coordinates" -> members.numbers = numbers(value);
                case "crs" -> GeoJsonReference.requireDegrees(parser, source);
                case "properties" -> members.properties = properties(value);
                default -> parser.skipChildren();
            }
        }
        return members;
    }

    private String skipped() throws IOException {
        parser.skipChildren();
        return null;
    }

    private void features(JsonToken value) throws IOException {
        if (value != JsonToken.START_ARRAY) {
            throw refuse(TEXTS.text("geoJsonTable.featuresShouldArray"), AGAIN);
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() != JsonToken.START_OBJECT) {
                throw refuse(TEXTS.text("geoJsonTable.featureShouldObject"), AGAIN);
            }
            take(object());
        }
    }

    /** The values of a flat array of numbers; null for anything deeper. */
    private List<String> numbers(JsonToken value) throws IOException {
        if (value != JsonToken.START_ARRAY) {
            parser.skipChildren();
            return null;
        }
        List<String> numbers = new ArrayList<>();
        boolean flat = true;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            flat &= parser.currentToken().isNumeric();
            if (flat && numbers.size() < AXES.length) {
                numbers.add(parser.getText());
            }
            parser.skipChildren();
        }
        return flat ? numbers : null;
    }

    private Map<String, String> properties(JsonToken value) throws IOException {
        if (value != JsonToken.START_OBJECT) {
            parser.skipChildren();
            return Map.of();
        }
        Map<String, String> properties = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName().strip();
            JsonToken token = parser.nextToken();
            if (token == JsonToken.START_ARRAY) {
                List<String> all = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    if (parser.currentToken().isScalarValue() && all.size() < 100) {
                        all.add(parser.getText());
                    }
                    parser.skipChildren();
                }
                properties.put(key, String.join(" ", all));
            } else if (token.isScalarValue() && token != JsonToken.VALUE_NULL) {
                properties.put(key, parser.getText().replaceAll("\\s+", " ").strip());
            } else {
                parser.skipChildren();
            }
        }
        return properties;
    }

    private void take(Members feature) throws ReadException {
        Members geometry = feature.geometry;
        if (geometry == null || !"Point".equals(geometry.type)) {
            others++;
            return;
        }
        if (geometry.numbers == null || geometry.numbers.size() < 2) {
            throw source.refuse(geometry.line, TEXTS.text("geoJsonTable.pointWithoutLongitude"), AGAIN);
        }
        Map<String, String> said = new LinkedHashMap<>();
        for (int i = 0; i < geometry.numbers.size(); i++) {
            said.put(AXES[i], geometry.numbers.get(i));
        }
        feature.properties.forEach((name, value) -> {
            if (!name.isEmpty()) {
                said.putIfAbsent(name, value);
            }
        });
        rows.add(feature.line, said);
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private ReadException refuse(String what, String whatToDo) {
        return source.refuse(line(), what, whatToDo);
    }
}
