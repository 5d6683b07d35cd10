package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SquareTest {

    private static Square sq(String name) {
        return Square.parse(name);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, JJ00", "64.5, -20, IP04", "64.5, -20.0000001, HP94", "64, -21, HP94", "63.9999999, -21, HP93",
        "90, 179.9, RR99", "90, 180, AR09", "-90, 180, AA00", "10, 180, AK00", "10, -180, AK00", "10, 179.9999, RK90"})
    void edgesBelongNorthAndEast(double latitude, double longitude, String name) {
        assertEquals(name, Square.of(new GeoPosition(latitude, longitude)).name());
    }

    @Test
    void partsOfASquare() {
        assertEquals("HP94", sq(" hp94 ").toString());
        assertEquals("HP", sq("HP94").field());
        assertEquals(new GeoPosition(64, -22), sq("HP94").southWest());
        assertEquals(new GeoPosition(64.5, -21), sq("HP94").centre());
        assertEquals(new GeoBounds(64, -22, 65, -20), sq("HP94").bounds());
    }

    /** The 20° W meridian parts two fields. */
    @Test
    void neighbours() {
        assertEquals(List.of(sq("HP83"), sq("HP93"), sq("IP03"), sq("HP84"), sq("IP04"), sq("HP85"), sq("HP95"), sq("IP05")),
                sq("HP94").neighbours());
        assertEquals(List.of(sq("RK99"), sq("AK09"), sq("AK19"), sq("RL90"), sq("AL10"), sq("RL91"), sq("AL01"), sq("AL11")),
                sq("AL00").neighbours());
        assertEquals(List.of(sq("RR98"), sq("AR08"), sq("AR18"), sq("RR99"), sq("AR19")), sq("AR09").neighbours());
        assertEquals(5, sq("JA50").neighbours().size());
    }

    @ParameterizedTest
    @CsvSource({"HP94, IP04, true, true", "HP94, HP95, true, true", "HP94, IP05, true, false", "HP94, IP14, false, false",
        "HP94, HP96, false, false", "HP94, HP94, false, false", "RK90, AK00, true, true", "RK90, AK01, true, false",
        "RK80, AK00, false, false", "AR09, JR09, false, false"})
    void touching(String one, String other, boolean touches, boolean sharesLine) {
        assertEquals(touches, sq(one).touches(sq(other)));
        assertEquals(touches, sq(other).touches(sq(one)));
        assertEquals(sharesLine, sq(one).sharesLineWith(sq(other)));
        assertEquals(sharesLine, sq(other).sharesLineWith(sq(one)));
    }

    @Test
    void neighboursAreExactlyTheSquaresThatTouch() {
        Random random = new Random(4);
        for (int i = 0; i < 300; i++) {
            Square square = Square.at(random.nextInt(180), random.nextInt(180));
            List<Square> around = square.neighbours();
            for (int row = 0; row < 180; row += 1) {
                for (int column = 0; column < 180; column += 7) {
                    Square other = Square.at(square.column() + column - 1, row);
                    assertEquals(around.contains(other), square.touches(other));
                }
            }
        }
    }

    @Test
    void everySquareIsFoundAgain() {
        for (int column = 0; column < 180; column++) {
            for (int row = 0; row < 180; row++) {
                Square square = Square.at(column, row);
                assertEquals(square, Square.of(square.southWest()));
                assertEquals(square, Square.of(square.centre()));
                assertEquals(square.locator(), Locator.of(square.centre(), 4));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "HP", "HP9", "HP94bc", "HS94", "9494", "HP94,HP95"})
    void whatIsNoSquareIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Square.parse(text));
        assertThrows(IllegalArgumentException.class, () -> Square.parse(null));
    }

    @Test
    void aNameThatIsNoneIsNoSquare() {
        assertEquals(Optional.of(new Square("JO01")), Square.named(" jo01 "));
        for (String none : new String[] {null, "", "  ", "JO0", "JO012", "SA00", "0000"}) {
            assertEquals(Optional.empty(), Square.named(none), none);
        }
    }

    /** Two or four squares meet; by the rule as the ADIF specification words it for lists of squares (from memory). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "HP94,IP04           | 20°W",
        "IP04,HP94           | 20°W",
        "HP94,HP95           | 65°N",
        "HP94 IP04 HP95 IP05 | 65°N 20°W",
        "FN31,FN32,FN41,FN42 | 42°N 72°W",
        "RK90,AK00           | 180°W",
        "RJ99,AJ09,RK90,AK00 | 10°N 180°W",
        "II99,JI09,IJ90,JJ00 | 0°N 0°E",
        "AA00,AA01           | 89°S",
        "HP94,IP05           | ",
        "HP94,IP14           | ",
        "HP94                | ",
        "HP94,HP94           | ",
        "HP94,IP04,HP95      | ",
        "HP94,IP04,HP95,IP06 | ",
        "HP94,IP04,IP14,IP24 | ",
        "AR09,BR09,AR19,BR19 | "})
    void meeting(String squares, String place) {
        List<Square> list = Squares.parse(squares);
        assertEquals(place, Squares.meetingPlace(list).map(Object::toString).orElse(null));
        assertEquals(place != null, Squares.meet(list));
    }

    @Test
    void everyBoundaryIsTheMeetingPlaceOfItsSquares() {
        for (int latitude = -89; latitude <= 89; latitude += 8) {
            for (int longitude = -180; longitude < 180; longitude += 2) {
                GridCorner corner = new GridCorner(latitude, longitude);
                assertEquals(corner, Squares.meetingPlace(corner.squares()).orElseThrow());
                for (GridLine line : List.of(corner.meridian(), corner.parallel())) {
                    assertEquals(line, Squares.meetingPlace(line.squaresAt(corner.position())).orElseThrow());
                }
            }
        }
    }

    @Test
    void aWrongPartOfAListIsNamed() {
        String message = assertThrows(IllegalArgumentException.class, () -> Squares.parse("HP94, HPX4")).getMessage();
        assertTrue(message.contains("HPX4"), message);
        assertEquals(List.of(), Squares.parse(" "));
        assertFalse(Squares.meet(List.of()));
    }
}
