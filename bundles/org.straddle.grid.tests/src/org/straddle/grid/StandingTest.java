package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandingTest {

    /** A place so many metres north and east of the corner of HP93, HP94, IP03 and IP04. */
    private static GeoPosition offCorner(double northM, double eastM) {
        GeoPosition corner = new GeoPosition(64, -20);
        return Geodesic.destination(Geodesic.destination(corner, 0, northM), 90, eastM);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        // north, east | R95, span | kind squares boundary (others)
        "0,     0   | 0, 0   | CORNER [HP93, HP94, IP03, IP04] 64°N 20°W []",
        "500, -500  | 5, 10  | INSIDE [HP94] - []",
        "500, -9    | 5, 10  | LINE [HP94, IP04] 20°W []",
        "500,  9    | 5, 10  | LINE [HP94, IP04] 20°W []",
        "500, 10.5  | 5, 10  | INSIDE [IP04] - []",
        "-9,  500   | 5, 10  | LINE [IP03, IP04] 64°N []",
        "7,    7    | 5, 10  | CORNER [HP93, HP94, IP03, IP04] 64°N 20°W []",
        "8,    9    | 5, 10  | LINE [IP03, IP04] 64°N [20°W]",
        "-9,  -8    | 5, 10  | LINE [HP93, IP03] 20°W [64°N]"})
    void whatCanBeOccupied(String off, String lengths, String expected) {
        double[] place = numbers(off);
        double[] length = numbers(lengths);
        Standing standing = Standing.of(offCorner(place[0], place[1]), length[0], length[1]);
        assertEquals(expected, standing.kind() + " " + standing.squares() + " "
                + standing.boundary().map(near -> near.boundary().toString()).orElse("-") + " "
                + standing.otherLines().stream().map(NearBoundary::boundary).toList());
    }

    private static double[] numbers(String text) {
        return java.util.Arrays.stream(text.split(",")).mapToDouble(Double::parseDouble).toArray();
    }

    @Test
    void theSquaresAlwaysMeetAndHoldThePosition() {
        Random random = new Random(21);
        for (int i = 0; i < 3000; i++) {
            GridCorner corner = new GridCorner(random.nextInt(170) - 85, 2 * random.nextInt(180) - 180);
            GeoPosition position = Geodesic.destination(corner.position(), random.nextDouble() * 360, random.nextDouble() * 40);
            Standing standing = Standing.of(position, random.nextDouble() * 15, random.nextDouble() * 30);
            boolean holds = standing.squares().contains(Square.of(position));
            assertEquals(true, holds, position.toString());
            assertEquals(switch (standing.kind()) {
                case INSIDE -> 1;
                case LINE -> 2;
                case CORNER -> 4;
            }, standing.squares().size());
            assertEquals(standing.kind() != Standing.Kind.INSIDE, Squares.meet(standing.squares()));
            assertEquals(standing.boundary().map(NearBoundary::boundary), Squares.meetingPlace(standing.squares()));
        }
    }

    @Test
    void lengthsThatAreNoneAreRefused() {
        GeoPosition position = new GeoPosition(64, -20);
        assertThrows(IllegalArgumentException.class, () -> Standing.of(position, -1, 5));
        assertThrows(IllegalArgumentException.class, () -> Standing.of(position, Double.NaN, 5));
        assertThrows(IllegalArgumentException.class, () -> Standing.of(position, 5, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> Standing.of(position, 400_000, 400_000));
    }
}
