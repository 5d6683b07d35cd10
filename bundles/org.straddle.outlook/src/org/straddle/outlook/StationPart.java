package org.straddle.outlook;

import java.util.Comparator;
import java.util.List;
import java.util.Set;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.grid.StationSpread;
import org.straddle.words.Catalogue;

/**
 * A part of the station and the square that it stands in.
 *
 * @param name such as "west end" or "north-east part"
 * @param eastM how far east of the line or corner it stands, metres; negative to the west
 * @param northM how far north of it, metres; negative to the south
 */
public record StationPart(String name, Square square, double eastM, double northM) {

    private static final Catalogue TEXTS = Catalogue.of(StationPart.class);

    /**
     * The parts of a station in the middle of the line or corner of its squares, from north to south, then from west to
     * east; none for a station within one square.
     *
     * @param squares the two of a line or the four of a corner, which the spread was made for
     */
    static List<StationPart> of(StationSpread spread, Set<Square> squares) {
        return switch (spread.kind()) {
            case INSIDE -> List.of();
            case LINE -> across(squares, spread.spanM() / 2);
            // The corners of a square whose diagonal is the span.
            case CORNER -> across(squares, spread.spanM() / (2 * Math.sqrt(2)));
        };
    }

    private static List<StationPart> across(Set<Square> squares, double awayM) {
        return squares.stream().map(square -> {
            int east = squares.stream().mapToInt(other -> eastOf(square, other)).sum();
            int north = squares.stream().mapToInt(other -> northOf(square, other)).sum();
            return new StationPart(name(Integer.signum(east), Integer.signum(north)), square,
                    Integer.signum(east) * awayM, Integer.signum(north) * awayM);
        }).sorted(Comparator.comparingDouble(StationPart::northM).reversed().thenComparingDouble(StationPart::eastM)).toList();
    }

    /** 1 where the first lies east of the second, −1 where it lies west of it; also across 180° of longitude. */
    private static int eastOf(Square square, Square other) {
        double apart = square.centre().longitudeDeg() - other.centre().longitudeDeg();
        return (int) Math.signum(Math.IEEEremainder(apart, 360));
    }

    private static int northOf(Square square, Square other) {
        GeoPosition here = square.centre();
        return (int) Math.signum(here.latitudeDeg() - other.centre().latitudeDeg());
    }

    private static String name(int east, int north) {
        String eastName = east > 0 ? "east" : "west";
        String northName = north > 0 ? "north" : "south";
        return north == 0 ? TEXTS.text("stationPart.end", "eastName", eastName) : east == 0
                ? TEXTS.text("stationPart.end.named", "northName", northName) : TEXTS.text("stationPart.part",
                "northName", northName, "eastName", eastName);
    }

    /** How far it stands from the line, or at a corner from each of the two lines, metres. */
    public double awayM() {
        return Math.max(Math.abs(eastM), Math.abs(northM));
    }
}
