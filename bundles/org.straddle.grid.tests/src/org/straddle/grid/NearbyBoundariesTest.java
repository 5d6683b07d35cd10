package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NearbyBoundariesTest {

    private static GeoPosition at(double latitude, double longitude) {
        return new GeoPosition(latitude, longitude);
    }

    /** Least value over a range, by ever finer rows of points: slow, and without any insight. */
    private static double leastByScan(double from, double to, DoubleUnaryOperator distanceM) {
        double best = from;
        double low = from;
        double high = to;
        for (int zoom = 0; zoom < 12; zoom++) {
            double step = (high - low) / 40;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 40; i++) {
                double here = distanceM.applyAsDouble(low + i * step);
                if (here < least) {
                    least = here;
                    best = low + i * step;
                }
            }
            low = Math.max(from, best - 2 * step);
            high = Math.min(to, best + 2 * step);
        }
        return distanceM.applyAsDouble(best);
    }

    @Test
    void distanceToAMeridianIsTheLeastOfAll() {
        Random random = new Random(11);
        for (int i = 0; i < 150; i++) {
            GeoPosition position = at(random.nextDouble() * 178 - 89, random.nextDouble() * 360 - 180);
            int column = Square.columnOf(position) + random.nextInt(5) - 2;
            GridLine line = GridLine.meridian(2 * Math.floorMod(column, 180) - 180);
            NearBoundary near = NearbyBoundaries.toLine(position, line);
            double least = leastByScan(-90, 90, latitude -> Geodesic.distanceM(position, at(latitude, line.degree())));
            assertEquals(least, near.distanceM(), 1e-4, position + " to " + line);
            assertEquals(line.degree(), near.foot().longitudeDeg());
            assertEquals(near.distanceM(), Geodesic.distanceM(position, near.foot()), 1e-9);
        }
    }

    @Test
    void distanceToAParallelIsTheLeastOfAll() {
        Random random = new Random(12);
        for (int i = 0; i < 150; i++) {
            GeoPosition position = at(random.nextDouble() * 176 - 88, random.nextDouble() * 360 - 180);
            GridLine line = GridLine.parallel((int) Math.rint(position.latitudeDeg() + random.nextGaussian()));
            NearBoundary near = NearbyBoundaries.toLine(position, line);
            double least = leastByScan(-180, 180,
                    turn -> Geodesic.distanceM(position, at(line.degree(), position.longitudeDeg() + turn)));
            assertEquals(least, near.distanceM(), 1e-4, position + " to " + line);
            assertEquals(line.degree(), near.foot().latitudeDeg());
        }
    }

    /** At the foot on a meridian the way there runs due east or west, however far it is. */
    @Test
    void theWayMeetsTheMeridianAtARightAngle() {
        Random random = new Random(13);
        for (int i = 0; i < 2000; i++) {
            double latitude = random.nextDouble() * 170 - 85;
            double degrees = random.nextDouble() * 4 / Math.cos(Math.toRadians(latitude));
            NearBoundary near = NearbyBoundaries.toLine(at(latitude, -20 + degrees), GridLine.meridian(-20));
            double bearing = Geodesic.between(near.foot(), at(latitude, -20 + degrees)).initialBearingDeg();
            // The angle is only as sharp as the way is long.
            assertEquals(90, bearing, 1e-9 + Math.toDegrees(1e-6 / near.distanceM()));
        }
    }

    /** Going due east along the parallel is the obvious wrong answer: the true foot is nearer the pole. */
    @Test
    void theFootLiesTowardsThePole() {
        NearBoundary near = NearbyBoundaries.toLine(at(64.5, -19), GridLine.meridian(-20));
        assertTrue(near.foot().latitudeDeg() > 64.5);
        assertTrue(near.distanceM() < Geodesic.distanceM(at(64.5, -19), at(64.5, -20)));
        assertTrue(NearbyBoundaries.toLine(at(-64.5, -19), GridLine.meridian(-20)).foot().latitudeDeg() < -64.5);
    }

    @Test
    void whatIsNearACorner() {
        List<NearBoundary> near = NearbyBoundaries.of(at(64.001, -20.001), 500);
        assertEquals("[20°W, 64°N, 64°N 20°W]", near.stream().map(NearBoundary::boundary).toList().toString());
        assertEquals(Squares.parse("HP94 IP04"), near.get(0).squares());
        assertEquals(Squares.parse("HP93 HP94"), near.get(1).squares());
        assertEquals(Squares.parse("HP93 IP03 HP94 IP04"), near.get(2).squares());
        double cornerByPythagoras = Math.hypot(near.get(0).distanceM(), near.get(1).distanceM());
        assertEquals(cornerByPythagoras, near.get(2).distanceM(), 0.01);
    }

    @Test
    void onTheLineItselfTheDistanceIsNone() {
        List<NearBoundary> near = NearbyBoundaries.of(at(64.3, -20), 0);
        assertEquals(1, near.size());
        assertEquals(0, near.get(0).distanceM());
        assertEquals(at(64.3, -20), near.get(0).foot());
        assertEquals(3, NearbyBoundaries.of(at(64, 180), 0).size());
    }

    @Test
    void nothingNear() {
        assertEquals(List.of(), NearbyBoundaries.of(at(64.5, -21), 40_000));
    }

    @Test
    void acrossTheAntimeridian() {
        NearBoundary line = NearbyBoundaries.of(at(10.5, 179.999), 200).get(0);
        assertEquals("180°W", line.boundary().toString());
        assertEquals(Squares.parse("RK90 AK00"), line.squares());
        // WGS-84: one degree of longitude at 10.5° is 109 470 m, by the radius of the parallel N cos φ.
        assertEquals(109.47, line.distanceM(), 0.01);
    }

    /** Every line and corner of the Earth is tried, and exactly the near ones are reported, nearest first. */
    @Test
    void nothingIsMissed() {
        Random random = new Random(14);
        for (int i = 0; i < 12; i++) {
            GeoPosition position = at(random.nextDouble() * 180 - 90, random.nextDouble() * 360 - 180);
            double reach = random.nextDouble() * 250_000;
            Set<Boundary> expected = new HashSet<>();
            for (int longitude = -180; longitude < 180; longitude += 2) {
                if (NearbyBoundaries.toLine(position, GridLine.meridian(longitude)).distanceM() <= reach) {
                    expected.add(GridLine.meridian(longitude));
                }
                for (int latitude = -89; latitude <= 89; latitude++) {
                    if (Math.abs(latitude - position.latitudeDeg()) < 4
                            && Geodesic.distanceM(position, at(latitude, longitude)) <= reach) {
                        expected.add(new GridCorner(latitude, longitude));
                    }
                }
            }
            for (int latitude = -89; latitude <= 89; latitude++) {
                if (NearbyBoundaries.toLine(position, GridLine.parallel(latitude)).distanceM() <= reach) {
                    expected.add(GridLine.parallel(latitude));
                }
            }
            List<NearBoundary> near = NearbyBoundaries.of(position, reach);
            assertEquals(expected, Set.copyOf(near.stream().map(NearBoundary::boundary).toList()), position + " " + reach);
            for (int n = 1; n < near.size(); n++) {
                assertTrue(near.get(n - 1).distanceM() <= near.get(n).distanceM());
            }
        }
    }

    @Test
    void nearAPole() {
        // 1 km from the pole every meridian is within 1 km, and no parallel is.
        GeoPosition position = Geodesic.destination(at(90, 0), 180, 1000);
        List<NearBoundary> near = NearbyBoundaries.of(position, 1001);
        assertEquals(180, near.size());
        NearBoundary far = NearbyBoundaries.toLine(position, GridLine.meridian(180));
        assertEquals(90, far.foot().latitudeDeg());
        assertEquals(1000, far.distanceM(), 1e-6);
        // On so small a circle the plane will do: the meridian 30° away is 1 km · sin 30° off.
        assertEquals(500, NearbyBoundaries.toLine(position, GridLine.meridian(30)).distanceM(), 0.001);
        assertEquals(180, NearbyBoundaries.of(at(-90, 0), 1).size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, 500_001})
    void reachOutOfRangeIsRefused(double reachM) {
        assertThrows(IllegalArgumentException.class, () -> NearbyBoundaries.of(at(64, -20), reachM));
    }
}
