package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * An invented net of winding roads in a block of squares, the same for the same seed: positions about
 * fifty metres apart, as mapped roads have them, and a road of 5 to 30 km for each name.
 */
final class SyntheticRoads {

    private static final double SOUTH_DEG = 58;
    private static final double WEST_DEG = 10;
    private static final double TALL_DEG = 8;
    private static final double WIDE_DEG = 16;
    private static final double STEP_M = 50;
    private static final double DEGREE_M = 111_320;

    private SyntheticRoads() {
    }

    static List<MapFeature> of(double km, MapRole role, long seed) {
        Random random = new Random(seed);
        List<MapFeature> roads = new ArrayList<>();
        double made = 0;
        while (made < km) {
            MapFeature road = road(random, "Road " + (roads.size() + 1), role, 5 + 25 * random.nextDouble());
            made += road.parts().get(0).roughLengthKm();
            roads.add(road);
        }
        return roads;
    }

    private static MapFeature road(Random random, String name, MapRole role, double km) {
        Trace.Builder trace = new Trace.Builder();
        double latitude = SOUTH_DEG + TALL_DEG * random.nextDouble();
        double longitude = WEST_DEG + WIDE_DEG * random.nextDouble();
        double bearing = 2 * Math.PI * random.nextDouble();
        for (double m = 0; m <= km * 1000; m += STEP_M) {
            trace.add(latitude, longitude);
            bearing += 0.1 * random.nextGaussian();
            latitude += STEP_M * Math.cos(bearing) / DEGREE_M;
            longitude += STEP_M * Math.sin(bearing) / DEGREE_M / Math.cos(Math.toRadians(latitude));
        }
        return new MapFeature(name, Optional.of(role), MapFeature.Shape.LINES, List.of(trace.build()));
    }

    /** Small squares, twenty metres wide, anywhere in the block. */
    static List<MapFeature> buildings(int count, long seed) {
        Random random = new Random(seed);
        List<MapFeature> buildings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double south = SOUTH_DEG + TALL_DEG * random.nextDouble();
            double west = WEST_DEG + WIDE_DEG * random.nextDouble();
            double side = 20 / DEGREE_M;
            Trace ring = new Trace.Builder().add(south, west).add(south, west + 2 * side).add(south + side, west + 2 * side)
                    .add(south + side, west).add(south, west).build();
            buildings.add(new MapFeature("", Optional.of(MapRole.BUILDING), MapFeature.Shape.AREA, List.of(ring)));
        }
        return buildings;
    }
}
