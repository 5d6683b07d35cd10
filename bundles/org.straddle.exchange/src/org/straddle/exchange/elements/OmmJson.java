package org.straddle.exchange.elements;

import java.io.IOException;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.words.Catalogue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import org.straddle.exchange.formats.FileFormat;

/**
 * Mean elements as JSON: an object, or an array of objects, with the keywords of the message as names. It is no
 * standard but in wide public use, and leaves out what is the same for all (frame, time system, theory).
 */
final class OmmJson {

    private static final Catalogue TEXTS = Catalogue.of(OmmJson.class);

    private static final JsonFactory JSON = JsonFactory.builder().streamReadConstraints(StreamReadConstraints.builder()
            .maxNestingDepth(16).maxStringLength(10_000).maxNameLength(1_000).maxNumberLength(100).build()).build();

    private final SourceFile source;
    private final JsonParser parser;
    private final OmmMessages messages = new OmmMessages();

    private OmmJson(SourceFile source, JsonParser parser) {
        this.source = source;
        this.parser = parser;
    }

    static ElementFile read(SourceFile source, String text) throws ReadException {
        try (JsonParser parser = JSON.createParser(text)) {
            OmmJson reading = new OmmJson(source, parser);
            reading.readAll();
            return reading.messages.toFile(source, FileFormat.OMM_JSON);
        } catch (ReadException e) {
            throw e;
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            throw new ReadException(source.name(), line, TEXTS.text("ommJson.notWellFormed",
                    "originalMessage", e.getOriginalMessage()),
                    TEXTS.text("ommJson.fetchFileAgain"), e);
        } catch (IOException e) {
            throw new ReadException(source.name(), 0, TEXTS.text("ommJson.fileCannotRead", "reason", e.getMessage()),
                    TEXTS.text("ommJson.fetchFileAgain"), e);
        }
    }

    private void readAll() throws IOException {
        if (parser.nextToken() == JsonToken.START_ARRAY) {
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                readObject();
            }
        } else {
            readObject();
        }
        if (parser.nextToken() != null) {
            throw refuse(TEXTS.text("ommJson.somethingFollowsEnd"));
        }
    }

    private void readObject() throws IOException {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            throw refuse(TEXTS.text("ommJson.elementSetShould"));
        }
        OmmMessage message = new OmmMessage(source, line(), false);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String keyword = parser.currentName();
            JsonToken value = parser.nextToken();
            if (value.isStructStart()) {
                throw refuse(TEXTS.text("ommJson.shouldTextNumber", "keyword", keyword));
            }
            message.put(keyword, value == JsonToken.VALUE_NULL ? "" : parser.getText(), "", line());
        }
        messages.add(message);
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private ReadException refuse(String what) {
        return source.refuse(line(), what, TEXTS.text("ommJson.fetchFileAgain"));
    }
}
