package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.sf.geographiclib.GeodesicLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrossingsTest {

    /** A track is written as positions parted by bars. */
    private static List<GeoPosition> track(String text) {
        List<GeoPosition> positions = new ArrayList<>();
        for (String part : text.split("\\|")) {
            positions.add(GeoPosition.parse(part));
        }
        return positions;
    }

    private static String sketch(List<Crossing> crossings) {
        return crossings.stream().map(c -> c.from() + ">" + c.to() + " " + c.boundary())
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', nullValues = "-", value = {
        "64.5 -21 | 64.5 -20.5              ; ''",
        "64.5 -20.5 | 64.5 -19.5            ; HP94>IP04 20°W",
        "64.5 -19.5 | 64.5 -20.5            ; IP04>HP94 20°W",
        "64.5 -21 | 65.5 -21                ; HP94>HP95 65°N",
        "65.5 -21 | 64.5 -21                ; HP95>HP94 65°N",
        "10.5 179.5 | 10.5 -179.5           ; RK90>AK00 180°W",
        "10.5 -179.5 | 10.5 179.5           ; AK00>RK90 180°W",
        "0.5 0.5 | -0.5 -0.5                ; JJ00>II99 0°N 0°E",
        // A position on the line belongs north and east: reaching it from there is no crossing, leaving it is one.
        "64.5 -19.5 | 64.5 -20              ; ''",
        "64.5 -20 | 64.5 -20.5              ; IP04>HP94 20°W",
        "64.5 -20.5 | 64.5 -20              ; HP94>IP04 20°W",
        "64.5 -20 | 64.5 -19.5              ; ''",
        "64.5 -20.5 | 64.5 -20 | 64.5 -19.5 ; HP94>IP04 20°W",
        "64.5 -19.5 | 64.5 -20 | 64.5 -20.5 ; IP04>HP94 20°W",
        "64.5 -19.5 | 64.5 -20 | 64.5 -19.5 ; ''",
        // Along the lines.
        "64.2 -20 | 64.8 -20                ; ''",
        "64.2 -20 | 65.2 -20                ; IP04>IP05 65°N",
        "0 10.5 | 0 11.5                    ; ''",
        // North of the equator a geodesic between two places of the same latitude bulges north, south of it south.
        "64 -21.9 | 64 -20.1                ; ''",
        "-64 -21.9 | -64 -20.1              ; HC96>HC95 64°S, HC95>HC96 64°S",
        "63.999 -21.9 | 63.999 -20.1        ; HP93>HP94 64°N, HP94>HP93 64°N",
        "64.5 -21 | 64.5 -21                ; ''",
        "64.5 -20 | 64.5 -20                ; ''",
        "64.5 -20.5                         ; ''"})
    void inOrderOfTravel(String positions, String expected) {
        assertEquals(expected, sketch(Crossings.of(track(positions))));
    }

    @Test
    void nothingWithoutATrack() {
        assertEquals(List.of(), Crossings.of(List.of()));
    }

    @Test
    void throughACorner() {
        GeoPosition corner = new GeoPosition(64, -20);
        List<GeoPosition> through = List.of(Geodesic.destination(corner, 225, 3000), Geodesic.destination(corner, 45, 3000));
        Crossing crossing = Crossings.of(through).get(0);
        assertEquals("HP93>IP04 64°N 20°W", sketch(Crossings.of(through)));
        assertEquals(corner, crossing.position());
        assertEquals(3000, crossing.distanceM(), 0.1);
        assertEquals(45, crossing.bearingDeg(), 0.05);
        assertEquals(Squares.parse("HP93 IP03 HP94 IP04"), crossing.squares());
        // A metre beside the corner the track does pass through a third square.
        GeoPosition beside = Geodesic.destination(corner, 315, 1);
        List<GeoPosition> past = List.of(Geodesic.destination(beside, 225, 3000), Geodesic.destination(beside, 45, 3000));
        assertEquals("HP93>HP94 64°N, HP94>IP04 20°W", sketch(Crossings.of(past)));
    }

    /** The error of a straight line in degrees, which the code must not make: about d² tan φ / (8 R). */
    @Test
    void anEdgeIsNotAStraightLineOnTheChart() {
        double halfDeg = 5000 / 111_320.0 / Math.cos(Math.toRadians(64.5));
        Crossing crossing = Crossings.of(List.of(new GeoPosition(64.5, -20 - halfDeg), new GeoPosition(64.5, -20 + halfDeg))).get(0);
        double off = Geodesic.distanceM(crossing.position(), new GeoPosition(64.5, -20));
        assertEquals(1e8 * Math.tan(Math.toRadians(64.5)) / (8 * 6.39e6), off, 0.05);
        assertEquals(90, crossing.bearingDeg(), 1e-6);
    }

    /** Walks each edge in small steps with the geodesic library and notes every change of square. */
    @Test
    void agreesWithWalkingTheTrack() {
        Random random = new Random(31);
        int seen = 0;
        for (int i = 0; i < 200; i++) {
            List<GeoPosition> track = new ArrayList<>();
            GeoPosition here = new GeoPosition(random.nextDouble() * 170 - 85, random.nextDouble() * 360 - 180);
            for (int n = 0; n < 4; n++) {
                track.add(here);
                here = Geodesic.destination(here, random.nextDouble() * 360, random.nextDouble() * 150_000);
            }
            List<Crossing> crossings = Crossings.of(track);
            List<Walked> walked = walk(track);
            assertEquals(walked.stream().map(Walked::to).toList(), crossings.stream().map(Crossing::to).toList(),
                    () -> track + " " + sketch(crossings));
            for (int n = 0; n < walked.size(); n++) {
                Crossing crossing = crossings.get(n);
                assertEquals(walked.get(n).distanceM, crossing.distanceM(), 0.1);
                assertTrue(Geodesic.distanceM(walked.get(n).position, crossing.position()) < 0.1, track.toString());
                assertEquals(0, Math.IEEEremainder(walked.get(n).bearingDeg - crossing.bearingDeg(), 360), 1e-4);
                assertTrue(crossing.squares().containsAll(List.of(crossing.from(), crossing.to())));
                assertEquals(crossing.boundary(), Squares.meetingPlace(crossing.squares()).orElseThrow());
                seen++;
            }
        }
        assertTrue(seen > 500, "crossings seen: " + seen);
    }

    private record Walked(double distanceM, GeoPosition position, double bearingDeg, Square to) {
    }

    private static List<Walked> walk(List<GeoPosition> track) {
        List<Walked> changes = new ArrayList<>();
        double before = 0;
        for (int edge = 0; edge + 1 < track.size(); edge++) {
            GeoPosition a = track.get(edge);
            GeoPosition b = track.get(edge + 1);
            GeodesicLine line = net.sf.geographiclib.Geodesic.WGS84.InverseLine(a.latitudeDeg(), a.longitudeDeg(),
                    b.latitudeDeg(), b.longitudeDeg());
            walk(changes, line, before, 0, line.Distance(), 2000);
            before += line.Distance();
        }
        return changes;
    }

    /** Steps of a tenth each, down to a centimetre, wherever the square differs between two steps. */
    private static void walk(List<Walked> changes, GeodesicLine line, double before, double from, double to, double step) {
        int steps = (int) Math.ceil((to - from) / step);
        for (int n = 0; n < steps; n++) {
            double low = from + n * step;
            double high = Math.min(to, low + step);
            if (square(line, low).equals(square(line, high))) {
                continue;
            }
            if (step > 0.01) {
                walk(changes, line, before, low, high, step / 10);
            } else {
                var data = line.Position(high);
                changes.add(new Walked(before + high, new GeoPosition(data.lat2, data.lon2), Geodesic.bearing(data.azi2),
                        square(line, high)));
            }
        }
    }

    private static Square square(GeodesicLine line, double alongM) {
        var data = line.Position(alongM);
        return Square.of(new GeoPosition(data.lat2, data.lon2));
    }

    /** The squares of a track form one chain from its first square to its last. */
    @Test
    void crossingsFormAChain() {
        Random random = new Random(32);
        for (int i = 0; i < 500; i++) {
            List<GeoPosition> track = new ArrayList<>();
            for (int n = 0; n < 6; n++) {
                // Whole and half degrees, so that many positions lie on lines and corners.
                track.add(new GeoPosition(-3 + random.nextInt(13) / 2.0, 176 + random.nextInt(17) / 2.0));
            }
            Square square = Square.of(track.get(0));
            double along = 0;
            for (Crossing crossing : Crossings.of(track)) {
                assertEquals(square, crossing.from(), track.toString());
                assertTrue(square.touches(crossing.to()), track.toString());
                assertTrue(crossing.distanceM() >= along - 0.1);
                square = crossing.to();
                along = crossing.distanceM();
            }
            assertEquals(Square.of(track.get(5)), square, track.toString());
        }
    }

    /** Steps of millimetres along a line, where rounding alone could seem to leave the square. */
    @Test
    void roundingDoesNotCross() {
        Random random = new Random(33);
        for (int i = 0; i < 3000; i++) {
            double latitude = random.nextInt(88) + 1;
            double longitude = random.nextInt(180) * 2 - 179 + random.nextDouble() * 0.9;
            double step = Math.pow(10, -9 * random.nextDouble());
            assertEquals(List.of(), Crossings.of(List.of(new GeoPosition(latitude, longitude),
                    new GeoPosition(latitude, longitude + step * 0.09))), latitude + " " + longitude + " " + step);
        }
    }

    @Test
    void overAPole() {
        List<Crossing> crossings = Crossings.of(track("89.5 1 | 89.5 -179"));
        assertEquals(Square.of(new GeoPosition(89.5, -179)), crossings.get(crossings.size() - 1).to());
        for (Crossing crossing : crossings) {
            assertEquals(90, crossing.position().latitudeDeg(), 1e-6);
        }
    }
}
