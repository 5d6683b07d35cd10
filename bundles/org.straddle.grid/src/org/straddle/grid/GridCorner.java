package org.straddle.grid;

import java.util.List;

import org.straddle.words.Catalogue;

/**
 * The meeting point of four squares. Prints as {@code 64°N 20°W}.
 *
 * @param latitudeDeg whole degree, -89 to 89: at a pole more than four squares meet
 * @param longitudeDeg even degree, -180 to 178 (180 is taken for -180)
 */
public record GridCorner(int latitudeDeg, int longitudeDeg) implements Boundary {

    private static final Catalogue TEXTS = Catalogue.of(GridCorner.class);

    /** @throws IllegalArgumentException if four squares do not meet there */
    public GridCorner {
        GridLine.parallel(latitudeDeg);
        longitudeDeg = GridLine.meridian(longitudeDeg).degree();
    }

    /** @throws IllegalArgumentException if the text is not a corner */
    public static GridCorner parse(String text) {
        String[] parts = text == null ? new String[0] : text.strip().split("(?<=[NSEWnsew])[\\s,]+");
        if (parts.length == 2) {
            GridLine first = GridLine.parse(parts[0]);
            GridLine second = GridLine.parse(parts[1]);
            if (!first.isMeridian() && second.isMeridian()) {
                return new GridCorner(first.degree(), second.degree());
            }
        }
        throw new IllegalArgumentException(TEXTS.text("gridCorner.unreadable", "text", Quoted.shortened(text)));
    }

    public GeoPosition position() {
        return new GeoPosition(latitudeDeg, longitudeDeg);
    }

    public GridLine parallel() {
        return GridLine.parallel(latitudeDeg);
    }

    public GridLine meridian() {
        return GridLine.meridian(longitudeDeg);
    }

    /** South-west, south-east, north-west, north-east. */
    public List<Square> squares() {
        int east = (longitudeDeg + 180) / 2;
        int north = latitudeDeg + 90;
        return List.of(Square.at(east - 1, north - 1), Square.at(east, north - 1),
                Square.at(east - 1, north), Square.at(east, north));
    }

    @Override
    public String toString() {
        return parallel() + " " + meridian();
    }
}
