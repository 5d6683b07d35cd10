package org.straddle.exchange.elements;

import java.nio.file.Path;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;

/**
 * Reads files of element sets. What kind of file it is shows in the content; names and extensions lie. A file is
 * taken as a whole or refused with its first bad line: half a file would leave birds with old elements, unnoticed.
 */
public final class ElementSetReader {

    private ElementSetReader() {
    }

    /** @throws ReadException when the file is not there, unknown, damaged, or holds elements for another theory */
    public static ElementFile read(Path path) throws ReadException {
        return read(SourceFile.read(path));
    }

    /** @throws ReadException when the file is unknown, damaged, or holds elements for another theory */
    public static ElementFile read(SourceFile source) throws ReadException {
        ElementFile file = understand(source);
        if (file.sets().isEmpty()) {
            throw source.refuse(0, "the file holds no element sets.", "Choose a file with at least one.");
        }
        return file;
    }

    private static ElementFile understand(SourceFile source) throws ReadException {
        String text = source.text();
        String start = text.substring(0, Math.min(text.length(), 10_000)).stripLeading();
        if (start.startsWith("<")) {
            return OmmXml.read(source);
        }
        if (start.startsWith("[") || start.startsWith("{")) {
            return OmmJson.read(source, text);
        }
        if (OmmKvn.matches(start)) {
            return OmmKvn.read(source, text);
        }
        if (OmmCsv.matches(start)) {
            return OmmCsv.read(source, text);
        }
        if (TleFile.matches(text)) {
            return TleFile.read(source, text);
        }
        throw source.unknownFormat();
    }
}
