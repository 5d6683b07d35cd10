package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.sf.geographiclib.GeodesicLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CandidateRankingTest {

    private static final ScoutReach REACH = new ScoutReach(10, 500);
    private static final GeoPosition HERE = new GeoPosition(64.5, -20);

    private static MapFeature at(String name, double bearing, double metres) {
        return new MapFeature(name, Optional.empty(), MapFeature.Shape.POINTS,
                List.of(Trace.of(Geodesic.destination(HERE, bearing, metres))));
    }

    private static List<RankedCandidate> rank(List<MapFeature> roads, Map<String, Double> demand, Surroundings... around) {
        return CandidateRanking.rank(LineScout.candidates(roads, REACH, null), REACH,
                square -> demand.getOrDefault(square.name(), 0.0), List.of(around), null);
    }

    private static MapFeature crossing(String name, double latitude) {
        return MapFeature.line(name, new GeoPosition(latitude, -20.01), new GeoPosition(latitude, -19.99));
    }

    @Test
    void demandOfAllSquaresComesFirst() {
        List<RankedCandidate> ranked = rank(List.of(crossing("low", 64.5), crossing("high", 65.5)),
                Map.of("HP94", 0.3, "IP04", 0.2, "HP95", 0.9));
        assertEquals(List.of("high", "low"), ranked.stream().map(r -> r.candidate().road().name()).toList());
        assertEquals(0.9, ranked.get(0).points(), 1e-12);
        assertEquals(0.5, ranked.get(1).demand(), 1e-12);
    }

    @Test
    void nearAddsItsWeightLessWithDistance() {
        Surroundings lines = Surroundings.of(MapRole.POWER_LINE, new Surroundings.Weight(-2, 200), List.of(at("mast", 10, 50)));
        Surroundings parking = Surroundings.of(new MapRole("car park"), new Surroundings.Weight(1, 1000), List.of(at("", 200, 250)));
        Surroundings far = Surroundings.of(MapRole.QUARRY, Surroundings.usual(MapRole.QUARRY), List.of(at("pit", 90, 501)));
        RankedCandidate ranked = rank(List.of(crossing("road", 64.5)), Map.of("HP94", 1.0), lines, parking, far).get(0);
        assertEquals(-1.5, ranked.near(MapRole.POWER_LINE).orElseThrow().points(), 0.001);
        assertEquals(50, ranked.near(MapRole.POWER_LINE).orElseThrow().distanceM(), 0.1);
        assertEquals(0.75, ranked.near(new MapRole("Car_Park")).orElseThrow().points(), 0.001);
        assertEquals(Optional.empty(), ranked.near(MapRole.QUARRY));
        assertEquals(1 - 1.5 + 0.75, ranked.points(), 0.002);
    }

    @Test
    void aWalkToTheCornerCosts() {
        MapFeature past = MapFeature.line("past", new GeoPosition(63.998, -20.02), new GeoPosition(63.998, -20.0005));
        RankedCandidate ranked = rank(List.of(past), Map.of("HP94", 1.0)).get(0);
        assertEquals(1 - (ranked.candidate().distanceM() - 5) / 1000, ranked.points(), 1e-12);
    }

    @Test
    void aRoadIsNotItsOwnSurroundings() {
        MapFeature road = crossing("Moor Road", 64.5);
        MapFeature goesOn = MapFeature.line("Moor Road", new GeoPosition(64.5, -19.99), new GeoPosition(64.5, -19.9));
        MapFeature other = MapFeature.line("", Geodesic.destination(HERE, 350, 300), Geodesic.destination(HERE, 10, 300));
        Surroundings roads = Surroundings.of(MapRole.ROAD, Surroundings.usual(MapRole.ROAD), List.of(road, goesOn, other));
        Nearness nearest = roads.nearest(HERE, road).orElseThrow();
        assertEquals(other, nearest.nearest());
        assertEquals(295.4, nearest.distanceM(), 0.1);
        assertEquals(0, roads.nearest(HERE, null).orElseThrow().distanceM(), 0.5);
    }

    @Test
    void withinAnAreaTheDistanceIsNought() {
        List<Trace> rings = List.of(ring(64.4, -20.2, 64.6, -19.8), ring(64.45, -20.1, 64.55, -19.95));
        MapFeature quarry = new MapFeature("pit", Optional.of(MapRole.QUARRY), MapFeature.Shape.AREA, rings);
        Surroundings pit = Surroundings.of(MapRole.QUARRY, new Surroundings.Weight(-1, 500), List.of(quarry));
        assertEquals(0, pit.nearest(new GeoPosition(64.42, -20), null).orElseThrow().distanceM());
        assertEquals(Optional.empty(), pit.nearest(HERE, null), "in its hole, far from the edge");
        assertEquals(Optional.empty(), pit.nearest(new GeoPosition(64.39, -20), null));
        // Across 180°.
        MapFeature east = new MapFeature("", Optional.empty(), MapFeature.Shape.AREA, List.of(ring(10, 179, 11, -179)));
        Surroundings around = Surroundings.of(MapRole.QUARRY, new Surroundings.Weight(-1, 500), List.of(east));
        assertEquals(0, around.nearest(new GeoPosition(10.5, 179.9), null).orElseThrow().distanceM());
        assertEquals(0, around.nearest(new GeoPosition(10.5, -179.9), null).orElseThrow().distanceM());
        assertEquals(Optional.empty(), around.nearest(new GeoPosition(10.5, 178.9), null));
    }

    private static Trace ring(double south, double west, double north, double east) {
        return Trace.of(new GeoPosition(south, west), new GeoPosition(south, east), new GeoPosition(north, east),
                new GeoPosition(north, west), new GeoPosition(south, west));
    }

    /** Distances to crooked lines against the nearest of many points on them. */
    @Test
    void distancesAgreeWithWalkingTheLines() {
        Random random = new Random(8);
        int seen = 0;
        for (int i = 0; i < 60; i++) {
            GeoPosition centre = new GeoPosition(random.nextDouble() * 150 - 75, i % 3 == 0 ? 179.99 : random.nextDouble() * 360 - 180);
            List<MapFeature> lines = new ArrayList<>();
            double least = Double.POSITIVE_INFINITY;
            for (int n = 0; n < 5; n++) {
                // A short edge and one of up to 100 km, which bulges far from the straight line on a chart.
                GeoPosition from = Geodesic.destination(centre, random.nextDouble() * 360, 3000 * random.nextDouble());
                GeoPosition bend = Geodesic.destination(from, random.nextDouble() * 360, 2000 * random.nextDouble());
                GeoPosition to = Geodesic.destination(bend, random.nextDouble() * 360, 100_000 * random.nextDouble());
                lines.add(MapFeature.line("", from, bend, to));
                least = Math.min(least, Math.min(walked(centre, from, bend), walked(centre, bend, to)));
            }
            Optional<Nearness> nearest = Surroundings.of(MapRole.ROAD, new Surroundings.Weight(1, 2000), lines).nearest(centre, null);
            assertEquals(least < 2000, nearest.isPresent(), centre + " " + least);
            if (nearest.isPresent()) {
                assertEquals(least, nearest.get().distanceM(), 0.1, centre.toString());
                seen++;
            }
        }
        assertTrue(seen > 40, "seen: " + seen);
    }

    private static double walked(GeoPosition centre, GeoPosition from, GeoPosition to) {
        GeodesicLine line = net.sf.geographiclib.Geodesic.WGS84.InverseLine(from.latitudeDeg(), from.longitudeDeg(),
                to.latitudeDeg(), to.longitudeDeg());
        double best = Double.POSITIVE_INFINITY;
        double at = 0;
        for (double step = line.Distance() / 500; step > 0.01; step /= 10) {
            double start = Math.max(0, at - 20 * step);
            double end = Math.min(line.Distance(), best == Double.POSITIVE_INFINITY ? line.Distance() : at + 20 * step);
            for (double along = start; along <= end + step / 2; along += step) {
                var point = line.Position(Math.min(along, line.Distance()));
                double distance = Geodesic.distanceM(centre, new GeoPosition(point.lat2, point.lon2));
                if (distance < best) {
                    best = distance;
                    at = along;
                }
            }
        }
        return best;
    }

    @ParameterizedTest
    @CsvSource({"Power Lines, power-line", "POWER_LINE, power-line", "quarries, quarry", "railways, railway", "roads, road",
        "' Buildings ', building", "car park, car-park", "gas, gas"})
    void roles(String written, String role) {
        assertEquals(role, new MapRole(written).name());
    }

    @Test
    void whatIsNoRoleOrWeight() {
        assertThrows(IllegalArgumentException.class, () -> new MapRole(""));
        assertThrows(IllegalArgumentException.class, () -> new MapRole("a=b"));
        assertThrows(IllegalArgumentException.class, () -> new Surroundings.Weight(Double.NaN, 10));
        assertThrows(IllegalArgumentException.class, () -> new Surroundings.Weight(1, 0));
    }
}
