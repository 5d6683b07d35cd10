package org.straddle.exchange;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.InertText;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;

/** JSON whose strings hold no character that acts ({@link InertText}): each is escaped, so that readers lose nothing. */
public final class JsonText {

    private static final JsonFactory FACTORY = new JsonFactory().setCharacterEscapes(new Escapes());

    private JsonText() {
    }

    public static JsonGenerator to(Writer out) throws IOException {
        return new Paired(FACTORY.createGenerator(out));
    }

    private static final class Escapes extends CharacterEscapes {

        private static final long serialVersionUID = 1L;
        private static final char DEL = 0x7F;

        private final int[] ascii = standardAsciiEscapesForJSON();

        private Escapes() {
            ascii[DEL] = ESCAPE_STANDARD;
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ascii.clone();
        }

        @Override
        public SerializableString getEscapeSequence(int character) {
            // Asked for each half of a pair by itself: pairs stay as they are.
            return InertText.acts(character) && !Character.isSurrogate((char) character)
                    ? new SerializedString(InertText.code(character)) : null;
        }
    }

    /** Halves of pairs that stand alone have no UTF-8; as escapes of RFC 8259 they can be written. */
    private static final class Paired extends JsonGeneratorDelegate {

        private static final Pattern ALONE = Pattern.compile("[\\x{D800}-\\x{DFFF}]");

        private Paired(JsonGenerator json) {
            super(json);
        }

        @Override
        public void writeString(String text) throws IOException {
            if (text == null || !ALONE.matcher(text).find()) {
                super.writeString(text);
                return;
            }
            StringWriter quoted = new StringWriter();
            try (JsonGenerator json = FACTORY.createGenerator(quoted)) {
                json.writeString(text);
            }
            writeRawValue(ALONE.matcher(quoted.toString()).replaceAll(half -> Matcher.quoteReplacement(InertText.code(half.group().charAt(0)))));
        }
    }
}
