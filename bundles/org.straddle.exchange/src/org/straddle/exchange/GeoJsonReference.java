package org.straddle.exchange;

import java.io.IOException;

import org.straddle.words.Catalogue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;

/** The reference system of GeoJSON: the 2008 specification allowed others; RFC 7946 section 4 knows WGS-84 alone. */
public final class GeoJsonReference {

    private static final Catalogue TEXTS = Catalogue.of(GeoJsonReference.class);

    private GeoJsonReference() {
    }

    /** Reads the value of a member {@code crs}, which is the current token. */
    public static void requireDegrees(JsonParser parser, MapSource source) throws IOException {
        int line = parser.currentTokenLocation().getLineNr();
        String name = "";
        int depth = 0;
        for (JsonToken token = parser.currentToken(); token != null; token = parser.nextToken()) {
            depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
            if (token == JsonToken.VALUE_STRING && "name".equals(parser.currentName())) {
                name = parser.getText();
            }
            if (depth == 0) {
                break;
            }
        }
        if (!name.isEmpty() && !name.matches("(?i).*(CRS:?84|[:/]4326)")) {
            throw source.refuse(line, TEXTS.text("geoJsonReference.coordinates",
                    "name", name.length() > 60 ? name.substring(0, 60) + "…" : name),
                    TEXTS.text("geoJsonReference.saveFileWgs"));
        }
    }
}
