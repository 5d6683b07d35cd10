package org.straddle.cli;

import java.io.PrintWriter;

import picocli.CommandLine.Option;

/** The choice of a format, the same for every command that prints rows. */
final class Rows {

    @Option(names = "--format", defaultValue = "table", paramLabel = "FORMAT")
    private TableFormat format;

    void print(Table table, PrintWriter out) {
        format.print(table, out);
    }

    /** Whether a person reads it, so that a line of prose around the table does no harm. */
    boolean forPeople() {
        return format == TableFormat.table;
    }
}
