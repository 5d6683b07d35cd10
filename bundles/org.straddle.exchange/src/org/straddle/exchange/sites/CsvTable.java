package org.straddle.exchange.sites;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.words.Catalogue;

/** CSV (RFC 4180) whose first line names the columns; parted by commas, semicolons, tabs or upright bars, whichever that line has most. */
final class CsvTable {

    private static final Catalogue TEXTS = Catalogue.of(CsvTable.class);

    private CsvTable() {
    }

    static SourceTable read(MapSource source, String text) throws ReadException {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter(text)).setTrim(true).setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true).get();
        int line = 1;
        List<String> columns = new ArrayList<>();
        List<SourceTable.Row> rows = new ArrayList<>();
        // The parser counts ends of lines: give it one for the last line too.
        try (CSVParser parser = CSVParser.parse(text + "\n", format)) {
            for (CSVRecord row : parser) {
                line = (int) parser.getCurrentLineNumber() - (int) row.stream().flatMapToInt(String::chars).filter(c -> c == '\n').count();
                if (columns.isEmpty()) {
                    columns.addAll(header(source, row, line));
                } else if (row.stream().anyMatch(value -> !value.isEmpty())) {
                    rows.add(row(source, row, columns, line));
                    SourceTable.refuseTooMany(source, rows.size(), line);
                }
            }
        } catch (ReadException e) {
            throw e;
        } catch (IOException | UncheckedIOException | IllegalArgumentException | IllegalStateException e) {
            throw new ReadException(source.name(), line, TEXTS.text("csvTable.tableDamagedFrom",
                    "reason", e.getCause() instanceof CSVException || e instanceof CSVException ? TEXTS.text("csvTable.quotes") : e.getMessage()), SourceTable.REPAIR, e);
        }
        if (rows.isEmpty()) {
            throw source.refuse(0, TEXTS.text("csvTable.noLines"), SourceTable.RIGHT_FILE);
        }
        return new SourceTable(source.name(), columns, rows, List.of());
    }

    private static char delimiter(String text) {
        String first = text.stripLeading().lines().findFirst().orElse("");
        char best = ',';
        for (char each : new char[] {';', '\t', '|'}) {
            if (first.chars().filter(c -> c == each).count() > first.chars().filter(c -> c == ',').count()) {
                best = each;
            }
        }
        return best;
    }

    private static List<String> header(MapSource source, CSVRecord row, int line) throws ReadException {
        List<String> names = new ArrayList<>(row.toList());
        // A spreadsheet leaves separators behind when columns were cleared.
        while (names.size() > 1 && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        if (names.size() > SourceTable.MOST_COLUMNS) {
            throw source.refuse(line, TEXTS.text("csvTable.firstLineNames",
                    "mostColumns", SourceTable.MOST_COLUMNS), SourceTable.RIGHT_FILE);
        }
        Set<String> once = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).isEmpty()) {
                names.set(i, TEXTS.text("csvTable.column", "i", (i + 1)));
            }
            if (names.get(i).length() > 100 || !once.add(names.get(i).toLowerCase(Locale.ROOT))) {
                throw source.refuse(line, names.get(i).length() > 100 ? TEXTS.text("csvTable.firstLineDoes")
                        : TEXTS.text("csvTable.columnTwice", "i", names.get(i)), SourceTable.RIGHT_FILE);
            }
        }
        if (names.stream().allMatch(name -> name.matches("[-+\\d.,;°'\"\\s]*"))) {
            throw source.refuse(line, TEXTS.text("csvTable.firstLineHolds"),
                    TEXTS.text("csvTable.putFirstLine"));
        }
        return names;
    }

    private static SourceTable.Row row(MapSource source, CSVRecord row, List<String> columns, int line) throws ReadException {
        List<String> values = new ArrayList<>(row.stream().map(CsvCell::read).toList());
        while (values.size() > columns.size() && values.get(values.size() - 1).isEmpty()) {
            values.remove(values.size() - 1);
        }
        if (values.size() != columns.size()) {
            throw source.refuse(line, TEXTS.text("csvTable.lineHasValues", "values", values.size(),
                    "columns", columns.size()),
                    SourceTable.REPAIR);
        }
        if (values.stream().anyMatch(value -> value.length() > SourceTable.LONGEST_VALUE)) {
            throw source.refuse(line, TEXTS.text("csvTable.valueLongerThan",
                    "longestValue", SourceTable.LONGEST_VALUE), SourceTable.REPAIR);
        }
        return new SourceTable.Row(line, values);
    }
}
