package org.straddle.grid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Sets of squares that one station claims at once: lists such as {@code HP94,HP95}, and whether they meet. */
public final class Squares {

    private Squares() {
    }

    /**
     * Reads squares parted by commas, semicolons, slashes or blanks, keeping their order; an empty
     * text holds none.
     *
     * @throws IllegalArgumentException naming the part that is no square
     */
    public static List<Square> parse(String text) {
        List<Square> squares = new ArrayList<>();
        for (String part : text == null ? new String[0] : text.split("[\\s,;/]+")) {
            if (!part.isEmpty()) {
                squares.add(Square.parse(part));
            }
        }
        return List.copyOf(squares);
    }

    /** Whether two squares share a line, or four share a corner; any other number does not meet. */
    public static boolean meet(Collection<Square> squares) {
        return meetingPlace(squares).isPresent();
    }

    /** The line that two squares share, or the corner that four share; empty for any other set. */
    public static Optional<Boundary> meetingPlace(Collection<Square> squares) {
        Set<Square> distinct = new HashSet<>(squares);
        if (distinct.size() == 2) {
            List<Square> pair = List.copyOf(distinct);
            return pair.get(0).sharesLineWith(pair.get(1)) ? Optional.of(sharedLine(pair.get(0), pair.get(1)))
                    : Optional.empty();
        }
        if (distinct.size() == 4) {
            return distinct.stream().filter(square -> square.row() > 0)
                    .map(square -> new GridCorner(square.row() - 90, 2 * square.column() - 180))
                    .filter(corner -> Set.copyOf(corner.squares()).equals(distinct))
                    .findFirst().map(corner -> corner);
        }
        return Optional.empty();
    }

    private static GridLine sharedLine(Square one, Square other) {
        if (one.row() != other.row()) {
            return GridLine.parallel(Math.max(one.row(), other.row()) - 90);
        }
        Square east = Square.at(one.column() + 1, one.row()).equals(other) ? other : one;
        return GridLine.meridian(2 * east.column() - 180);
    }
}
