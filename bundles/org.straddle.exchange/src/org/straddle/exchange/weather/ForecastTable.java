package org.straddle.exchange.weather;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.grid.GeoPosition;
import org.straddle.words.Catalogue;

/**
 * A forecast as a file has it.
 *
 * @param place where it is for
 * @param source who made it
 * @param issued when it was made
 * @param rows in order of time
 */
public record ForecastTable(GeoPosition place, String source, Instant issued, List<ForecastRow> rows) {

    private static final Catalogue TEXTS = Catalogue.of(ForecastTable.class);

    private static final Pattern NOTE = Pattern.compile("#\\s*([a-z]+)\\s*:\\s*(.*)");
    private static final String TIME = "time";
    private static final int MOST = 10_000;

    /** A dew point may stand so much above the temperature by rounding, K. */
    private static final double ROUNDING_K = 1;

    public ForecastTable {
        rows = List.copyOf(rows);
    }

    /** @throws ReadException at the first thing that is wrong */
    public static ForecastTable read(SourceFile file) throws ReadException {
        return new Reading(file).table();
    }

    /** One file on its way into a table. */
    private static final class Reading {

        private final SourceFile file;
        private final Map<String, String> notes = new HashMap<>();
        private final Map<String, Integer> noted = new HashMap<>();
        private final List<ForecastRow> rows = new ArrayList<>();
        private final Set<Instant> times = new HashSet<>();
        private List<Optional<Quantity>> columns = List.of();

        Reading(SourceFile file) {
            this.file = file;
        }

        ForecastTable table() throws ReadException {
            List<String> lines = file.text().lines().toList();
            if (lines.size() > MOST) {
                throw file.refuse(MOST, TEXTS.text("weather.long", "most", MOST), TEXTS.text("weather.cut"));
            }
            for (int at = 0; at < lines.size(); at++) {
                line(at + 1, lines.get(at).strip());
            }
            if (rows.isEmpty()) {
                throw file.refuse(0, TEXTS.text("weather.empty"), TEXTS.text("weather.layout"));
            }
            rows.sort((one, other) -> one.at().compareTo(other.at()));
            return new ForecastTable(new GeoPosition(degrees("latitude", 90), degrees("longitude", 180)), note("source"),
                    instant(noted.getOrDefault("issued", 0), note("issued")), rows);
        }

        private void line(int number, String text) throws ReadException {
            Matcher note = NOTE.matcher(text);
            if (note.matches()) {
                notes.put(note.group(1), note.group(2).strip());
                noted.put(note.group(1), number);
            } else if (text.isEmpty() || text.startsWith("#")) {
                return;
            } else if (columns.isEmpty()) {
                heading(number, cells(text));
            } else {
                row(number, cells(text));
            }
        }

        private static List<String> cells(String text) {
            return Stream.of(text.split("[,;\t]", -1)).map(cell -> cell.strip().replaceAll("^\"|\"$", "")).toList();
        }

        private void heading(int number, List<String> cells) throws ReadException {
            if (!cells.get(0).equalsIgnoreCase(TIME)) {
                throw file.refuse(number, TEXTS.text("weather.first", "first", cells.get(0)), TEXTS.text("weather.layout"));
            }
            List<Optional<Quantity>> found = new ArrayList<>(List.of(Optional.empty()));
            for (String cell : cells.subList(1, cells.size())) {
                found.add(Optional.of(quantity(number, cell.toLowerCase(Locale.ROOT))));
            }
            if (found.stream().flatMap(Optional::stream).map(Quantity::figure).distinct().count() < found.size() - 1) {
                throw file.refuse(number, TEXTS.text("weather.twice"), TEXTS.text("weather.layout"));
            }
            columns = List.copyOf(found);
        }

        private Quantity quantity(int number, String heading) throws ReadException {
            return Stream.of(Quantity.values()).filter(each -> each.heading().equals(heading)).findFirst()
                    .orElseThrow(() -> file.refuse(number, TEXTS.text("weather.column", "heading", heading),
                            TEXTS.text("weather.units", "headings", Stream.of(Quantity.values()).map(Quantity::heading)
                                    .collect(Collectors.joining(", ")))));
        }

        private void row(int number, List<String> cells) throws ReadException {
            if (cells.size() != columns.size()) {
                throw file.refuse(number, TEXTS.text("weather.cells", "cells", cells.size(), "columns", columns.size()),
                        TEXTS.text("weather.layout"));
            }
            Instant at = instant(number, cells.get(0));
            if (!times.add(at)) {
                throw file.refuse(number, TEXTS.text("weather.again", "time", cells.get(0)), TEXTS.text("weather.layout"));
            }
            Map<Quantity.Figure, Double> figures = new EnumMap<>(Quantity.Figure.class);
            for (int column = 1; column < cells.size(); column++) {
                if (!cells.get(column).isEmpty()) {
                    Quantity quantity = columns.get(column).orElseThrow();
                    figures.put(quantity.figure(), figure(number, quantity, cells.get(column)));
                }
            }
            Double dew = figures.get(Quantity.Figure.DEW_POINT);
            Double warm = figures.get(Quantity.Figure.TEMPERATURE);
            if (dew != null && warm != null && dew > warm + ROUNDING_K) {
                throw file.refuse(number, TEXTS.text("weather.dew"), TEXTS.text("weather.check"));
            }
            rows.add(new ForecastRow(at, figures));
        }

        private double figure(int number, Quantity quantity, String cell) throws ReadException {
            try {
                double value = quantity.inModel(Double.parseDouble(cell));
                if (quantity.figure().holds(value)) {
                    return value;
                }
            } catch (NumberFormatException notANumber) {
                // Said below, as for a number that no weather has.
            }
            throw file.refuse(number, TEXTS.text("weather.figure", "cell", cell, "heading", quantity.heading()), TEXTS.text("weather.check"));
        }

        private Instant instant(int number, String text) throws ReadException {
            try {
                return OffsetDateTime.parse(text).toInstant();
            } catch (DateTimeParseException notATime) {
                throw file.refuse(number, TEXTS.text("weather.time", "text", text), TEXTS.text("weather.zone"));
            }
        }

        private double degrees(String name, double most) throws ReadException {
            try {
                double value = Double.parseDouble(note(name));
                if (Math.abs(value) <= most) {
                    return value;
                }
            } catch (NumberFormatException notANumber) {
                // Said below, as for degrees that no place has.
            }
            throw file.refuse(noted.get(name), TEXTS.text("weather.degrees", "name", name, "text", notes.get(name)), TEXTS.text("weather.check"));
        }

        private String note(String name) throws ReadException {
            String note = notes.getOrDefault(name, "");
            if (note.isEmpty()) {
                throw file.refuse(0, TEXTS.text("weather.note", "name", name), TEXTS.text("weather.notes"));
            }
            return note;
        }
    }
}
