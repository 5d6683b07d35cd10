package org.straddle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;

/** The ways in which rows can be printed: for people, for programs, for spreadsheets. */
enum TableFormat {

    table {
        @Override
        void print(Table table, PrintWriter out) {
            List<Table.Column> columns = table.columns();
            int[] widths = new int[columns.size()];
            boolean[] numbers = new boolean[columns.size()];
            for (int i = 0; i < widths.length; i++) {
                int column = i;
                widths[i] = columns.get(i).title().length();
                numbers[i] = !table.rows().isEmpty()
                        && table.rows().stream().map(row -> row.get(column)).allMatch(v -> v == null || v instanceof Number);
                for (List<Object> row : table.rows()) {
                    widths[i] = Math.max(widths[i], shown(row.get(i)).length());
                }
            }
            line(out, widths, numbers, columns.stream().map(Table.Column::title).toList());
            line(out, widths, numbers, java.util.Arrays.stream(widths).mapToObj("-"::repeat).toList());
            for (List<Object> row : table.rows()) {
                line(out, widths, numbers, row.stream().map(TableFormat::shown).toList());
            }
        }
    },

    json {
        @Override
        void print(Table table, PrintWriter out) {
            try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
                json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
                json.useDefaultPrettyPrinter();
                json.writeStartArray();
                for (List<Object> row : table.rows()) {
                    json.writeStartObject();
                    for (int i = 0; i < row.size(); i++) {
                        json.writeFieldName(table.columns().get(i).key());
                        value(json, row.get(i));
                    }
                    json.writeEndObject();
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

    csv {
        @Override
        void print(Table table, PrintWriter out) {
            try {
                // Not closed: the writer belongs to the caller.
                CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
                csv.printRecord(table.columns().stream().map(Table.Column::key));
                for (List<Object> row : table.rows()) {
                    csv.printRecord(row.stream().map(TableFormat::plain));
                }
                csv.flush();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    };

    abstract void print(Table table, PrintWriter out);

    private static void line(PrintWriter out, int[] widths, boolean[] numbers, List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String padding = " ".repeat(widths[i] - cells.get(i).length());
            line.append(i == 0 ? "" : "  ").append(numbers[i] ? padding + cells.get(i) : cells.get(i) + padding);
        }
        out.println(line.toString().stripTrailing());
    }

    private static String shown(Object value) {
        // A line break would tear the row apart.
        return plain(value).replaceAll("\\R", " ");
    }

    private static String plain(Object value) {
        if (value instanceof Double number) {
            return number == Math.rint(number) && Math.abs(number) < 1e9 ? String.valueOf(number.longValue())
                    : String.format(Locale.ROOT, "%.4f", number).replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        if (value instanceof List<?> list) {
            return String.join(" ", list.stream().map(Objects::toString).toList());
        }
        return Objects.toString(value, "");
    }
}
