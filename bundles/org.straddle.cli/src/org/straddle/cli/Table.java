package org.straddle.cli;

import java.util.ArrayList;
import java.util.List;

import org.straddle.words.Catalogue;

/** Rows under named columns; how they are printed is the business of {@link TableFormat}. */
final class Table {

    /**
     * One column.
     *
     * @param key   name of the value in JSON and CSV, lower camel case with its unit
     * @param title heading of the printed column
     */
    record Column(String key, String title) {
    }

    private static final Catalogue TEXTS = Catalogue.of(Table.class);

    private final List<Column> columns;
    private final List<List<Object>> rows = new ArrayList<>();

    Table(Column... columns) {
        this.columns = List.of(columns);
    }

    /** A column whose heading stands in the catalogue by its key. */
    static Column column(String key) {
        return new Column(key, TEXTS.text("column." + key));
    }

    /** A column that is made of what the user named. */
    static Column column(String key, String title) {
        return new Column(key, title);
    }

    /** Adds a row; values are strings, numbers, booleans, anything with a good {@code toString}, or null. */
    Table row(Object... values) {
        if (values.length != columns.size()) {
            throw new IllegalArgumentException(values.length + " values for " + columns.size() + " columns");
        }
        List<Object> row = new ArrayList<>(values.length);
        for (Object value : values) {
            row.add(value);
        }
        rows.add(row);
        return this;
    }

    List<Column> columns() {
        return columns;
    }

    List<List<Object>> rows() {
        return rows;
    }
}
