package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.straddle.words.Catalogue;

/**
 * Which squares a station at a site can occupy at once, from where the site is and how wide the
 * station is spread.
 *
 * <p>The position is taken for the middle of the station, so its ends stand half the span away. The
 * true place may be off by the error of the position, and the team will move by that much once it
 * reads its own position on the day. A line is therefore within reach up to half the span plus the
 * error. Whether presence can then be <em>argued</em> is another question: see {@link Presence}.
 *
 * @param kind inside one square, on the line of two, or on the corner of four
 * @param squares the squares that can be occupied at once, sorted: one, two or four
 * @param boundary the line or corner that is used; empty inside
 * @param otherLines further lines within reach that cannot be used together with the chosen one,
 *     because the corner itself is out of reach
 */
public record Standing(Kind kind, List<Square> squares, Optional<NearBoundary> boundary,
        List<NearBoundary> otherLines) {

    private static final Catalogue TEXTS = Catalogue.of(Standing.class);

    /** How many squares meet at a site. */
    public enum Kind {
        /** Within one square. */
        INSIDE,
        /** On the line between two squares. */
        LINE,
        /** On the meeting point of four squares. */
        CORNER
    }

    public Standing {
        squares = List.copyOf(squares);
        otherLines = List.copyOf(otherLines);
    }

    /**
     * @param position the surveyed middle of the station
     * @param r95M radius in metres that holds the true position in 95 % of cases, 0 or more
     * @param spanM the longest distance between two occupied parts of the station in metres, 0 or more
     * @throws IllegalArgumentException if a length is negative, not a number, or too large together
     */
    public static Standing of(GeoPosition position, double r95M, double spanM) {
        requireLength(TEXTS.text("standing.positionError"), r95M);
        requireLength(TEXTS.text("standing.stationSpan"), spanM);
        List<NearBoundary> near = NearbyBoundaries.of(position, spanM / 2 + r95M);
        Optional<NearBoundary> corner = near.stream().filter(b -> b.boundary() instanceof GridCorner).findFirst();
        if (corner.isPresent()) {
            return new Standing(Kind.CORNER, sorted(corner.get()), corner, List.of());
        }
        if (near.isEmpty()) {
            return new Standing(Kind.INSIDE, List.of(Square.of(position)), Optional.empty(), List.of());
        }
        return new Standing(Kind.LINE, sorted(near.get(0)), Optional.of(near.get(0)), near.subList(1, near.size()));
    }

    private static List<Square> sorted(NearBoundary boundary) {
        return new ArrayList<>(new TreeSet<>(boundary.squares()));
    }

    private static void requireLength(String name, double metres) {
        if (!(metres >= 0 && metres <= NearbyBoundaries.FARTHEST_M)) {
            throw new IllegalArgumentException(TEXTS.text("standing.length", "name", name, "metres", metres));
        }
    }
}
