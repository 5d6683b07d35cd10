package org.straddle.exchange.elements;

import java.nio.file.Path;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.exchange.formats.Purpose;
import org.straddle.words.Catalogue;

/**
 * Reads files of element sets. What kind of file it is shows in the content; names and extensions lie. A file is
 * taken as a whole or refused with its first bad line: half a file would leave birds with old elements, unnoticed.
 */
public final class ElementSetReader {

    private static final Catalogue TEXTS = Catalogue.of(ElementSetReader.class);

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
            throw source.refuse(0, TEXTS.text("elementSetReader.fileHoldsElement"), TEXTS.text("elementSetReader.chooseFileLeast"));
        }
        return file;
    }

    private static ElementFile understand(SourceFile source) throws ReadException {
        String text = source.text();
        FileFormat format = FileFormat.of(text, Purpose.ELEMENTS).orElseThrow(source::unknownFormat);
        return switch (format) {
            case OMM_XML -> OmmXml.read(source);
            case OMM_JSON -> OmmJson.read(source, text);
            case OMM_KVN -> OmmKvn.read(source, text);
            case OMM_CSV -> OmmCsv.read(source, text);
            case TLE -> TleFile.read(source, text);
            default -> throw new IllegalStateException(TEXTS.text("elementSetReader.nobodyReadsElement", "format", format));
        };
    }
}
