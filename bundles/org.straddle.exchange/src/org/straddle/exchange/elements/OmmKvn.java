package org.straddle.exchange.elements;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.words.Catalogue;

/** Messages as lines of keyword = value [unit], one after the other in a file; CCSDS 502.0-B-3, section 7. */
final class OmmKvn {

    private static final Catalogue TEXTS = Catalogue.of(OmmKvn.class);

    static final String VERSION = "CCSDS_OMM_VERS";

    private static final Pattern LINE = Pattern.compile("([A-Z][A-Z0-9_]*)\\s*=\\s*(.*)");
    private static final Pattern WITH_UNIT = Pattern.compile("([^\\[]*)\\[([^\\[\\]]*)\\]");
    private static final Pattern READABLE_VERSION = Pattern.compile("[1-3]\\.\\d+");

    private OmmKvn() {
    }

    static ElementFile read(SourceFile source, String text) throws ReadException {
        OmmMessages messages = new OmmMessages();
        OmmMessage message = null;
        int number = 0;
        for (String raw : (Iterable<String>) text.lines()::iterator) {
            number++;
            String line = raw.strip();
            if (line.isEmpty() || line.startsWith("COMMENT")) {
                continue;
            }
            Matcher m = LINE.matcher(line);
            if (!m.matches()) {
                throw source.refuse(number, TEXTS.text("ommKvn.notLineLike"),
                        TEXTS.text("ommCsv.fetchFileAgain"));
            }
            if (m.group(1).equals(VERSION)) {
                finish(message, messages);
                requireReadable(source, number, m.group(2));
                message = new OmmMessage(source, number, true);
            } else if (message == null || m.group(1).matches("CCSDS_.*_VERS")) {
                throw source.refuse(number, TEXTS.text("ommKvn.messageNotOrbit",
                        "version", VERSION), TEXTS.text("ommKvn.chooseFileOmm"));
            } else {
                put(message, m.group(1), m.group(2), number);
            }
        }
        finish(message, messages);
        return messages.toFile(source, FileFormat.OMM_KVN);
    }

    private static void put(OmmMessage message, String keyword, String value, int line) throws ReadException {
        Matcher m = WITH_UNIT.matcher(value);
        boolean unit = OmmUnits.has(keyword) && m.matches();
        message.put(keyword, unit ? m.group(1) : value, unit ? m.group(2) : "", line);
    }

    static void requireReadable(SourceFile source, int line, String version) throws ReadException {
        if (!READABLE_VERSION.matcher(version.strip()).matches()) {
            throw source.refuse(line, TEXTS.text("ommKvn.messageVersionVersions", "version", version),
                    TEXTS.text("ommKvn.fetchOlderVersion"));
        }
    }

    private static void finish(OmmMessage message, OmmMessages messages) throws ReadException {
        if (message != null) {
            messages.add(message);
        }
    }
}
