package org.straddle.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.straddle.words.Catalogue;

/**
 * Rows under named columns; how they are printed is the business of {@link TableFormat}. Rows are collected one by one, or
 * made as they are printed, for tables that are larger than memory.
 */
final class Table {

    /**
     * One column.
     *
     * @param key    name of the value in JSON and CSV, lower camel case with its unit
     * @param title  heading of the printed column
     * @param widest how many characters the widest value has, if that is known before the rows are; else 0
     */
    record Column(String key, String title, int widest) {
    }

    private static final Catalogue TEXTS = Catalogue.of(Table.class);

    private final List<Column> columns;
    private final List<List<Object>> collected = new ArrayList<>();
    private final Iterable<List<Object>> rows;

    Table(Column... columns) {
        this.columns = List.of(columns);
        this.rows = collected;
    }

    /** @param rows each with a value for every column; asked for once */
    Table(List<Column> columns, Iterable<List<Object>> rows) {
        this.columns = List.copyOf(columns);
        this.rows = rows;
    }

    /** A column whose heading stands in the catalogue by its key. */
    static Column column(String key) {
        return column(key, 0);
    }

    static Column column(String key, int widest) {
        return new Column(key, TEXTS.text("column." + key), widest);
    }

    /** A column that is made of what the user named. */
    static Column column(String key, String title) {
        return new Column(key, title, 0);
    }

    /** Adds a row; values are strings, numbers, booleans, anything with a good {@code toString}, or null. */
    Table row(Object... values) {
        if (values.length != columns.size()) {
            throw new IllegalArgumentException(values.length + " values for " + columns.size() + " columns");
        }
        List<Object> row = new ArrayList<>(values.length);
        Collections.addAll(row, values);
        collected.add(row);
        return this;
    }

    List<Column> columns() {
        return columns;
    }

    Iterable<List<Object>> rows() {
        return rows;
    }

    /** Whether all rows are there, so that they can be looked at twice. */
    boolean isCollected() {
        return rows == collected;
    }
}
