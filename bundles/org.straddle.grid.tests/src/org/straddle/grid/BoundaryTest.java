package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoundaryTest {

    @ParameterizedTest
    @CsvSource({"20W, 20°W", "20 °w, 20°W", "64N, 64°N", "180E, 180°W", "0W, 0°E", "0S, 0°N", "64N 20W, 64°N 20°W",
        "64°n 20°w, 64°N 20°W", "64 ° N 20 ° W, 64°N 20°W", "64N20W, "})
    void notation(String text, String printed) {
        if (printed == null) {
            assertThrows(IllegalArgumentException.class, () -> Boundary.parse(text));
            return;
        }
        Boundary boundary = Boundary.parse(text);
        assertEquals(printed, boundary.toString());
        assertEquals(boundary, Boundary.parse(printed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "21W", "90N", "90S", "182E", "20", "W", "20W 64N", "64N 21W", "64N 65N", "999999W"})
    void whereNoSquaresMeet(String text) {
        assertThrows(IllegalArgumentException.class, () -> Boundary.parse(text));
        assertThrows(IllegalArgumentException.class, () -> Boundary.parse(null));
    }

    /** The trade says of 88° W that it parts EN50 from EN60 (common practice, no source). */
    @Test
    void aLineJoinsTwoSquares() {
        assertEquals(Squares.parse("EN50 EN60"), GridLine.meridian(-88).squaresAt(new GeoPosition(40.3, -88)));
        assertEquals(Squares.parse("HP93 HP94"), GridLine.parallel(64).squaresAt(new GeoPosition(64, -21)));
        assertEquals(Squares.parse("RK90 AK00"), GridLine.meridian(180).squaresAt(new GeoPosition(10.5, 180)));
    }

    @Test
    void aCornerJoinsFour() {
        assertEquals(Squares.parse("FN31 FN41 FN32 FN42"), new GridCorner(42, -72).squares());
        assertEquals(Squares.parse("RJ99 AJ09 RK90 AK00"), new GridCorner(10, 180).squares());
        assertEquals(List.of(-180), List.of(new GridCorner(10, 180).longitudeDeg()));
    }
}
