package org.straddle.grid;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/**
 * A line between squares, all the way round the Earth or from pole to pole. Prints as {@code 20°W} or
 * {@code 64°N}.
 *
 * @param kind meridian or parallel
 * @param degree for a meridian an even longitude, -180 to 178 (180 is taken for -180), east positive;
 *     for a parallel a latitude, -89 to 89, north positive: the poles are points, not lines
 */
public record GridLine(Kind kind, int degree) implements Boundary {

    private static final Catalogue TEXTS = Catalogue.of(GridLine.class);

    /** Which way a line runs. */
    public enum Kind {
        /** Runs north and south; every 2° of longitude. */
        MERIDIAN,
        /** Runs east and west; every 1° of latitude. */
        PARALLEL
    }

    private static final Pattern FORM = Pattern.compile("(\\d{1,3})\\s*°?\\s*([NSEW])");

    /** @throws IllegalArgumentException if no squares meet at this degree */
    public GridLine {
        Objects.requireNonNull(kind, "kind");
        if (kind == Kind.MERIDIAN) {
            degree = degree == 180 ? -180 : degree;
            if (degree < -180 || degree > 178 || degree % 2 != 0) {
                throw new IllegalArgumentException(
                        TEXTS.text("gridLine.squaresMeetLongitude", "degree", degree));
            }
        } else if (degree < -89 || degree > 89) {
            throw new IllegalArgumentException(
                    TEXTS.text("gridLine.squaresMeetLatitude", "degree", degree));
        }
    }

    public static GridLine meridian(int longitudeDeg) {
        return new GridLine(Kind.MERIDIAN, longitudeDeg);
    }

    public static GridLine parallel(int latitudeDeg) {
        return new GridLine(Kind.PARALLEL, latitudeDeg);
    }

    /** @throws IllegalArgumentException if the text is not a line between squares */
    public static GridLine parse(String text) {
        Matcher form = FORM.matcher(text == null ? "" : text.strip().toUpperCase(Locale.ROOT));
        if (!form.matches()) {
            throw new IllegalArgumentException(TEXTS.text("gridLine.unreadable", "text", Quoted.shortened(text)));
        }
        String letter = form.group(2);
        int degree = Integer.parseInt(form.group(1)) * ("SW".contains(letter) ? -1 : 1);
        return new GridLine("EW".contains(letter) ? Kind.MERIDIAN : Kind.PARALLEL, degree);
    }

    public boolean isMeridian() {
        return kind == Kind.MERIDIAN;
    }

    /**
     * The two squares on both sides of this line at the place nearest to a position in degrees: west
     * and east of a meridian, south and north of a parallel.
     */
    public List<Square> squaresAt(GeoPosition position) {
        if (isMeridian()) {
            int east = (degree + 180) / 2;
            int row = Square.rowOf(position);
            return List.of(Square.at(east - 1, row), Square.at(east, row));
        }
        int north = degree + 90;
        int column = Square.columnOf(position);
        return List.of(Square.at(column, north - 1), Square.at(column, north));
    }

    @Override
    public String toString() {
        String letter = isMeridian() ? (degree < 0 ? "W" : "E") : (degree < 0 ? "S" : "N");
        return Math.abs(degree) + "°" + letter;
    }
}
