package org.straddle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.JsonText;
import org.straddle.model.InertText;

import com.fasterxml.jackson.core.JsonGenerator;

/**
 * The ways in which rows can be printed: for people, for programs, for spreadsheets. Each prints a row as soon as it has it,
 * and stops when nobody reads on.
 */
enum TableFormat {

    /**
     * Columns are as wide as their widest value. Of rows that are made as they are printed the first {@link #SAMPLE} and
     * what is known of a column before decide; a later value that is wider moves the rest of its row to the right, and is
     * never cut.
     */
    table {
        @Override
        void print(Table table, PrintWriter out) {
            List<Table.Column> columns = table.columns();
            Iterator<List<Object>> rows = table.rows().iterator();
            List<List<Object>> sample = new ArrayList<>();
            while (rows.hasNext() && (table.isCollected() || sample.size() < SAMPLE)) {
                sample.add(rows.next());
            }
            int[] widths = new int[columns.size()];
            boolean[] numbers = new boolean[columns.size()];
            for (int i = 0; i < widths.length; i++) {
                int column = i;
                widths[i] = Math.max(columns.get(i).title().length(), rows.hasNext() ? columns.get(i).widest() : 0);
                numbers[i] = !sample.isEmpty()
                        && sample.stream().map(row -> row.get(column)).allMatch(v -> v == null || v instanceof Number);
                for (List<Object> row : sample) {
                    widths[i] = Math.max(widths[i], shown(row.get(i)).length());
                }
            }
            line(out, widths, numbers, columns.stream().map(Table.Column::title).toList());
            line(out, widths, numbers, Arrays.stream(widths).mapToObj("-"::repeat).toList());
            sample.forEach(row -> line(out, widths, numbers, row.stream().map(TableFormat::shown).toList()));
            long printed = 0;
            while (rows.hasNext() && isRead(out, printed++)) {
                line(out, widths, numbers, rows.next().stream().map(TableFormat::shown).toList());
            }
        }
    },

    json {
        @Override
        void print(Table table, PrintWriter out) {
            try (JsonGenerator json = JsonText.to(out)) {
                json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
                json.disable(JsonGenerator.Feature.FLUSH_PASSED_TO_STREAM);
                json.useDefaultPrettyPrinter();
                json.writeStartArray();
                long printed = 0;
                for (Iterator<List<Object>> rows = table.rows().iterator(); rows.hasNext() && isRead(out, printed++);) {
                    List<Object> row = rows.next();
                    json.writeStartObject();
                    for (int i = 0; i < row.size(); i++) {
                        json.writeFieldName(table.columns().get(i).key());
                        value(json, row.get(i));
                    }
                    json.writeEndObject();
                    if (printed % SAMPLE == 1) {
                        json.flush();
                    }
                }
                json.writeEndArray();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            out.println();
        }

        private void value(JsonGenerator json, Object value) throws IOException {
            if (value == null) {
                json.writeNull();
            } else if (value instanceof Integer || value instanceof Long) {
                json.writeNumber(((Number) value).longValue());
            } else if (value instanceof Number number) {
                json.writeNumber(number.doubleValue());
            } else if (value instanceof Boolean truth) {
                json.writeBoolean(truth);
            } else if (value instanceof List<?> list) {
                json.writeStartArray();
                for (Object element : list) {
                    value(json, element);
                }
                json.writeEndArray();
            } else {
                json.writeString(value.toString());
            }
        }
    },

    /** Text that a spreadsheet would take for a formula is protected: see {@link CsvCell}. */
    csv {
        @Override
        void print(Table table, PrintWriter out) {
            try {
                // Not closed: the writer belongs to the caller.
                CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
                csv.printRecord(table.columns().stream().map(Table.Column::key));
                long printed = 0;
                for (Iterator<List<Object>> rows = table.rows().iterator(); rows.hasNext() && isRead(out, printed++);) {
                    csv.printRecord(rows.next().stream().map(TableFormat::cell));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    };

    /** Rows that decide on the widths of columns: enough for a screen, and there in a moment. */
    private static final int SAMPLE = 1000;

    abstract void print(Table table, PrintWriter out);

    /** Now and then looks whether anybody still reads what is printed, and lets them have it. */
    private static boolean isRead(PrintWriter out, long printed) {
        return printed % SAMPLE != 1 || !out.checkError();
    }

    private static void line(PrintWriter out, int[] widths, boolean[] numbers, List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String padding = " ".repeat(Math.max(0, widths[i] - cells.get(i).length()));
            line.append(i == 0 ? "" : "  ").append(numbers[i] ? padding + cells.get(i) : cells.get(i) + padding);
        }
        // Not println, which would flush each line.
        out.write(line.toString().stripTrailing());
        out.write(System.lineSeparator());
    }

    /** In a row: an end of a line would tear it apart. */
    private static String shown(Object value) {
        return InertText.line(plain(value));
    }

    private static String cell(Object value) {
        return value instanceof Number ? plain(value) : CsvCell.of(plain(value));
    }

    private static String plain(Object value) {
        if (value instanceof Double number) {
            return number == Math.rint(number) && Math.abs(number) < 1e9 ? String.valueOf(number.longValue())
                    : !Double.isFinite(number) ? number.toString()
                            : BigDecimal.valueOf(number).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
        }
        if (value instanceof List<?> list) {
            return String.join(" ", list.stream().map(Objects::toString).toList());
        }
        return Objects.toString(value, "");
    }
}
