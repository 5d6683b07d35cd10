package org.straddle.exchange.elements;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.words.Catalogue;

/**
 * Mean elements as a table: the first line names the columns with the keywords of the message, each further line is
 * a set. Like the JSON form it leaves out what is the same for all.
 */
final class OmmCsv {

    private static final Catalogue TEXTS = Catalogue.of(OmmCsv.class);

    private static final String REPAIR = TEXTS.text("ommCsv.fetchFileAgain");
    private static final CSVFormat CSV = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true).setIgnoreSurroundingSpaces(true).setTrim(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW).get();

    private OmmCsv() {
    }

    static ElementFile read(SourceFile source, String text) throws ReadException {
        OmmMessages messages = new OmmMessages();
        int line = 1;
        // The parser counts ends of lines: give it one for the last line too.
        try (CSVParser parser = CSVParser.parse(text + "\n", CSV)) {
            for (CSVRecord row : parser) {
                line = (int) parser.getCurrentLineNumber() - breaksWithin(row);
                messages.add(message(source, row, line));
            }
        } catch (ReadException e) {
            throw e;
        } catch (IOException | UncheckedIOException | IllegalArgumentException | IllegalStateException e) {
            throw new ReadException(source.name(), line, TEXTS.text("ommCsv.tableDamagedFrom",
                    "reason", e.getMessage()), REPAIR, e);
        }
        return messages.toFile(source, FileFormat.OMM_CSV);
    }

    /** Line breaks in quoted values: the line to name is the one where the row begins. */
    private static int breaksWithin(CSVRecord row) {
        return (int) row.stream().flatMapToInt(String::chars).filter(c -> c == '\n').count();
    }

    private static OmmMessage message(SourceFile source, CSVRecord row, int line) throws ReadException {
        if (!row.isConsistent()) {
            throw source.refuse(line, TEXTS.text("ommCsv.lineHasValues", "row", row.size(),
                    "headerNames", row.getParser().getHeaderNames().size()), REPAIR);
        }
        OmmMessage message = new OmmMessage(source, line, false);
        for (Map.Entry<String, String> cell : row.toMap().entrySet()) {
            message.put(cell.getKey(), cell.getValue(), "", line);
        }
        return message;
    }
}
