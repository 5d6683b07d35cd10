package org.straddle.exchange;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

import com.fasterxml.jackson.core.JsonGenerator;

/** A FeatureCollection of RFC 7946 as text, a line for each feature. */
public final class FeatureCollection {

    /** Writes the fields of one feature. */
    public interface Fields<T> {
        void write(JsonGenerator json, T feature) throws IOException;
    }

    private FeatureCollection() {
    }

    public static <T> String text(List<T> features, Fields<T> fields) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JsonText.to(text)) {
            json.writeStartObject();
            json.writeStringField("type", "FeatureCollection");
            json.writeArrayFieldStart("features");
            for (T feature : features) {
                json.writeRaw("\n");
                json.writeStartObject();
                json.writeStringField("type", "Feature");
                fields.write(json, feature);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }
}
