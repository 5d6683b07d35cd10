package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.sf.geographiclib.GeodesicLine;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineScoutTest {

    private static final ScoutReach TEN_METRES = new ScoutReach(10, 500);

    /** Positions parted by bars. */
    private static MapFeature road(String text) {
        List<GeoPosition> positions = new ArrayList<>();
        for (String part : text.split("\\|")) {
            positions.add(GeoPosition.parse(part));
        }
        return road(positions);
    }

    private static MapFeature road(List<GeoPosition> positions) {
        return MapFeature.line("road", positions.toArray(GeoPosition[]::new));
    }

    private static List<Candidate> scout(MapFeature road, ScoutReach reach) {
        return LineScout.candidates(List.of(road), reach, null);
    }

    private static String sketch(List<Candidate> candidates) {
        return candidates.stream().map(c -> c.kind() + " " + c.boundary() + " " + c.squares()).collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "64.5 -20.01 | 64.5 -19.99              ; CROSSING 20°W [HP94, IP04]",
        "64.5 -19.99 | 64.5 -20.01              ; CROSSING 20°W [HP94, IP04]",
        "64.99 -21 | 65.01 -21                  ; CROSSING 65°N [HP94, HP95]",
        "10.5 179.99 | 10.5 -179.99             ; CROSSING 180°W [RK90, AK00]",
        "64.5 -21 | 64.6 -21                    ; ''",
        // Beside a line, within half of ten metres: 0.00004° of latitude are 4.5 m.
        "64.99996 -21 | 64.99996 -21.01         ; ALONGSIDE 65°N [HP94, HP95]",
        "64.9999 -21 | 64.9999 -21.01           ; ''",
        // On the line itself, which is no crossing.
        "64.2 -20 | 64.21 -20                   ; ALONGSIDE 20°W [HP94, IP04]",
        // Over the line and back at once, on one stretch, and on two.
        "64.99998 -21 | 65.00002 -21.0001 | 64.99998 -21.0002 ; CROSSING 65°N [HP94, HP95], CROSSING 65°N [HP94, HP95]",
        "64.999 -21 | 65.001 -21.001 | 64.999 -21.002 ; CROSSING 65°N [HP94, HP95], CROSSING 65°N [HP94, HP95]",
        // A loop that crosses itself on the way is no matter.
        "64.999 -21 | 65.001 -20.999 | 65.001 -21 | 64.999 -20.999 ; CROSSING 65°N [HP94, HP95], CROSSING 65°N [HP94, HP95]",
        // Straight through a corner, and past it at 300 m.
        "63.999 -20.002 | 64.001 -19.998        ; CORNER 64°N 20°W [HP93, IP03, HP94, IP04]",
        "63.9973 -20.002 | 63.9973 -19.99       ; CROSSING 20°W [HP93, IP03], CORNER 64°N 20°W [HP93, IP03, HP94, IP04]",
        "63.99 -20.002 | 63.99 -19.99           ; CROSSING 20°W [HP93, IP03]",
        // Twice past the same corner.
        "63.9973 -20.004 | 63.9973 -20.0005 | 63.98 -20.0005 | 63.9973 -20.0004 | 63.9973 -20.00035 ; "
            + "CORNER 64°N 20°W [HP93, IP03, HP94, IP04], CORNER 64°N 20°W [HP93, IP03, HP94, IP04]",
        "64.5 -21 | 64.5 -21                    ; ''",
        "64.5 -21                               ; ''",
        "89.9 1 | 89.9 -100                     ; ''"})
    void whatARoadMeets(String positions, String expected) {
        assertEquals(expected, sketch(scout(road(positions), TEN_METRES)));
    }

    @Test
    void aRoadNeedsNotBeALine() {
        MapFeature area = new MapFeature("", java.util.Optional.empty(), MapFeature.Shape.AREA,
                road("64.5 -21 | 64.5 -19 | 65.5 -20 | 64.5 -21").parts());
        assertEquals(List.of(), scout(area, TEN_METRES));
        assertEquals(List.of(), LineScout.candidates(List.of(), TEN_METRES, null));
        assertEquals(List.of(), scout(MapFeature.line("empty"), TEN_METRES));
    }

    @ParameterizedTest
    @CsvSource({"90, 90, 10", "270, 90, 10", "60, 60, 11.547", "45, 45, 14.142", "10, 10, 57.588", "170, 10, 57.588"})
    void angleAndBandAtAMeridian(double bearing, double angle, double band) {
        GeoPosition on = new GeoPosition(64.5, -20);
        Candidate candidate = scout(road(List.of(Geodesic.destination(on, bearing + 180, 900), Geodesic.destination(on, bearing, 900))),
                TEN_METRES).get(0);
        // The band of a straight road is the span over the sine of the angle.
        assertEquals(band, candidate.bandM(), 0.02);
        assertEquals(angle, candidate.angleDeg(), 0.02);
        assertTrue(Geodesic.distanceM(on, candidate.position()) < 0.01);
    }

    @Test
    void aBandGoesOnOverManyEdges() {
        // 4.5 m south of the line for 40 edges of 47 m, then away from it at a right angle.
        List<GeoPosition> track = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            track.add(new GeoPosition(64.99996, -21 + i * 0.001));
        }
        track.add(new GeoPosition(64.9, -20.96));
        Candidate candidate = scout(road(track), TEN_METRES).get(0);
        double along = Geodesic.distanceM(track.get(0), track.get(40));
        assertEquals(along + 0.54, candidate.bandM(), 0.1);
    }

    @Test
    void atACornerTheStationStandsWithinHalfItsSpan() {
        GeoPosition corner = new GeoPosition(64, -20);
        GeoPosition beside = Geodesic.destination(corner, 300, 3);
        List<Candidate> found = scout(road(List.of(Geodesic.destination(beside, 210, 400), Geodesic.destination(beside, 30, 400))), TEN_METRES);
        Candidate candidate = found.stream().filter(c -> c.kind() == Candidate.Kind.CORNER).findFirst().orElseThrow();
        // A chord 3 m from the middle of a circle of 5 m is 8 m long.
        assertEquals(8, candidate.bandM(), 0.01);
        assertEquals(3, candidate.distanceM(), 0.01);
        assertEquals(30, candidate.angleDeg(), 0.1);
        assertEquals(0, scout(road(List.of(new GeoPosition(63.998, -20.1), new GeoPosition(63.998, -20.001))), TEN_METRES)
                .get(0).bandM());
    }

    /** Every candidate against a walk in small steps with the geodesic library, and nothing missed. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void agreesWithWalkingTheRoad(long seed) {
        Random random = new Random(seed);
        ScoutReach reach = new ScoutReach(40, 300);
        int seen = 0;
        for (int i = 0; i < 25; i++) {
            // Around a corner, where all kinds are met.
            GridCorner corner = new GridCorner(random.nextInt(160) - 80, random.nextInt(180) * 2 - 180);
            List<GeoPosition> track = new ArrayList<>();
            GeoPosition here = Geodesic.destination(corner.position(), random.nextDouble() * 360, 700 * random.nextDouble());
            for (int n = 0; n < 6; n++) {
                track.add(here);
                here = Geodesic.destination(corner.position(), random.nextDouble() * 360,
                        Math.pow(10, 1 + 2 * random.nextDouble()));
            }
            List<Candidate> found = scout(road(track), reach);
            for (GridLine line : List.of(corner.parallel(), corner.meridian())) {
                List<Candidate> ofLine = found.stream().filter(c -> c.boundary().equals(line)).toList();
                List<double[]> walked = walk(track, p -> NearbyBoundaries.toLine(p, line).distanceM(), 20);
                walked.sort(Comparator.comparingDouble(stretch -> stretch[0]));
                seen += walked.size();
                List<Double> bands = ofLine.stream().map(Candidate::bandM).distinct().sorted().toList();
                assertEquals(walked.size(), bands.size(), () -> track + " " + line + " " + sketch(found));
                for (int n = 0; n < walked.size(); n++) {
                    assertEquals(walked.get(n)[0], bands.get(n), 0.5, track.toString());
                }
                for (Candidate candidate : ofLine) {
                    NearBoundary near = NearbyBoundaries.toLine(candidate.position(), line);
                    assertEquals(candidate.distanceM(), near.distanceM(), 0.01);
                    assertEquals(near.squares(), candidate.squares());
                }
            }
            List<Candidate> corners = found.stream().filter(c -> c.boundary().equals(corner))
                    .sorted(Comparator.comparingDouble(Candidate::distanceM)).toList();
            List<double[]> walked = walk(track, p -> Geodesic.distanceM(p, corner.position()), 300);
            seen += walked.size();
            walked.sort(Comparator.comparingDouble(stretch -> stretch[1]));
            assertEquals(walked.size(), corners.size(), track.toString());
            for (int n = 0; n < walked.size(); n++) {
                assertEquals(walked.get(n)[1], corners.get(n).distanceM(), 0.1, track.toString());
                assertEquals(corners.get(n).distanceM(), Geodesic.distanceM(corners.get(n).position(), corner.position()), 0.01);
            }
        }
        assertTrue(seen > 120, "stretches seen: " + seen);
    }

    private interface Distance {
        double toM(GeoPosition position);
    }

    /** Length and least distance of each stretch within a distance, in steps of 25 cm. */
    private static List<double[]> walk(List<GeoPosition> track, Distance distance, double withinM) {
        List<double[]> stretches = new ArrayList<>();
        double[] current = null;
        for (int edge = 0; edge + 1 < track.size(); edge++) {
            GeoPosition a = track.get(edge);
            GeoPosition b = track.get(edge + 1);
            GeodesicLine line = net.sf.geographiclib.Geodesic.WGS84.InverseLine(a.latitudeDeg(), a.longitudeDeg(),
                    b.latitudeDeg(), b.longitudeDeg());
            double step = 0.25;
            for (double along = 0; along < line.Distance() + step; along += step) {
                along = Math.min(along, line.Distance());
                var at = line.Position(along);
                double far = distance.toM(new GeoPosition(at.lat2, at.lon2));
                if (far > withinM) {
                    current = null;
                    if (along == line.Distance()) {
                        break;
                    }
                    // Nobody comes nearer than he walks.
                    along += Math.max(0, far - withinM - step);
                    continue;
                }
                if (current == null) {
                    current = new double[] {0, far};
                    stretches.add(current);
                }
                current[0] += Math.min(step, line.Distance() - along);
                current[1] = Math.min(current[1], far);
                if (along == line.Distance()) {
                    break;
                }
            }
        }
        return stretches;
    }

    /** The crossings of a road net are those of {@link Crossings}, whatever comes between. */
    @Test
    void allCrossingsAndNoOther() {
        Random random = new Random(5);
        int seen = 0;
        for (int i = 0; i < 100; i++) {
            List<GeoPosition> track = new ArrayList<>();
            GeoPosition here = new GeoPosition(random.nextDouble() * 160 - 80, random.nextDouble() * 360 - 180);
            for (int n = 0; n < 8; n++) {
                track.add(here);
                here = Geodesic.destination(here, random.nextDouble() * 360, Math.pow(10, 3 + 3 * random.nextDouble()));
            }
            List<String> expected = Crossings.of(track).stream().map(c -> c.boundary() + " " + c.squares()).sorted().toList();
            List<String> found = scout(road(track), TEN_METRES).stream().filter(c -> c.kind() == Candidate.Kind.CROSSING)
                    .map(c -> c.boundary() + " " + c.squares()).sorted().toList();
            assertEquals(expected, found, track.toString());
            seen += found.size();
        }
        assertTrue(seen > 500, "crossings seen: " + seen);
    }

    @Test
    void theClosedFormOfTheDistanceIsExactNearALine() {
        Random random = new Random(6);
        for (int i = 0; i < 2000; i++) {
            GridCorner corner = new GridCorner(random.nextInt(171) - 85, random.nextInt(180) * 2 - 180);
            GridLine line = random.nextBoolean() ? corner.parallel() : corner.meridian();
            GeoPosition foot = line.isMeridian() ? new GeoPosition(corner.latitudeDeg() + random.nextDouble(), line.degree())
                    : new GeoPosition(line.degree(), corner.longitudeDeg() + random.nextDouble());
            GeoPosition position = Geodesic.destination(foot, random.nextDouble() * 360, 1000 * random.nextDouble());
            assertEquals(NearbyBoundaries.toLine(position, line).distanceM(),
                    Math.abs(LineBand.offM(position.latitudeDeg(), position.longitudeDeg(), line)), 1e-3, position + " " + line);
        }
    }

    @Test
    void stopsWhenCancelled() {
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class,
                () -> LineScout.candidates(List.of(road("64.5 -20.01 | 64.5 -19.99")), TEN_METRES, monitor));
    }

    @Test
    void lengthsOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new ScoutReach(0, 10));
        assertThrows(IllegalArgumentException.class, () -> new ScoutReach(1001, 10));
        assertThrows(IllegalArgumentException.class, () -> new ScoutReach(10, -1));
        assertThrows(IllegalArgumentException.class, () -> new ScoutReach(10, Double.NaN));
    }
}
