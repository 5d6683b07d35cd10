package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.words.Catalogue;

/**
 * A Maidenhead square: four characters, 2° of longitude by 1° of latitude.
 *
 * <p>Edges are half-open, [west, east) by [south, north). Latitude 90° belongs to the northernmost
 * squares and longitude 180° is -180°. Squares that only share a pole do not count as neighbours.
 *
 * @param name two capitals A-R and two digits; any case is accepted
 */
public record Square(String name) implements Comparable<Square> {

    private static final Catalogue TEXTS = Catalogue.of(Square.class);

    static final int COLUMNS = 180;
    static final int ROWS = 180;

    /** @throws IllegalArgumentException if the name is not a four-character locator */
    public Square {
        String given = name == null ? "" : name.strip();
        if (given.length() != 4) {
            throw new IllegalArgumentException(TEXTS.text("square.unreadable", "text", Quoted.shortened(name)));
        }
        name = new Locator(given).text();
    }

    /** @throws IllegalArgumentException if the text is not a four-character locator */
    public static Square parse(String text) {
        return new Square(text);
    }

    /** The square of that name, in any case and with blanks around it; empty when there is none. */
    public static Optional<Square> named(String name) {
        try {
            return Optional.of(parse(name));
        } catch (IllegalArgumentException noSquare) {
            return Optional.empty();
        }
    }

    public static Square of(GeoPosition position) {
        return at(columnOf(position), rowOf(position));
    }

    static int columnOf(GeoPosition position) {
        return (int) Math.floor(position.longitudeDeg() / 2) + COLUMNS / 2;
    }

    static int rowOf(GeoPosition position) {
        return Math.min((int) Math.floor(position.latitudeDeg()) + ROWS / 2, ROWS - 1);
    }

    /**
     * @param column counted eastward from 180°W, any whole number: it goes round the Earth
     * @param row counted northward from the south pole, 0 to 179
     */
    static Square at(int column, int row) {
        int around = Math.floorMod(column, COLUMNS);
        return new Square("" + (char) ('A' + around / 10) + (char) ('A' + row / 10) + around % 10 + row % 10);
    }

    int column() {
        return (name.charAt(0) - 'A') * 10 + (name.charAt(2) - '0');
    }

    int row() {
        return (name.charAt(1) - 'A') * 10 + (name.charAt(3) - '0');
    }

    /** The two letters of the field the square lies in. */
    public String field() {
        return name.substring(0, 2);
    }

    public Locator locator() {
        return new Locator(name);
    }

    public GeoBounds bounds() {
        return locator().bounds();
    }

    public GeoPosition southWest() {
        return bounds().southWest();
    }

    public GeoPosition centre() {
        return bounds().centre();
    }

    /** The eight squares around, or five next to a pole, from the south-west eastward and northward. */
    public List<Square> neighbours() {
        List<Square> around = new ArrayList<>();
        for (int row = Math.max(row() - 1, 0); row <= Math.min(row() + 1, ROWS - 1); row++) {
            for (int column = column() - 1; column <= column() + 1; column++) {
                if (row != row() || column != column()) {
                    around.add(at(column, row));
                }
            }
        }
        return List.copyOf(around);
    }

    /** Whether both share a line or a corner, also across 180°; a square does not touch itself. */
    public boolean touches(Square other) {
        return !equals(other) && columnsApart(other) <= 1 && Math.abs(row() - other.row()) <= 1;
    }

    /** Whether both have a stretch of line in common. */
    public boolean sharesLineWith(Square other) {
        return columnsApart(other) + Math.abs(row() - other.row()) == 1;
    }

    private int columnsApart(Square other) {
        int apart = Math.abs(column() - other.column());
        return Math.min(apart, COLUMNS - apart);
    }

    @Override
    public int compareTo(Square other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
