package org.straddle.grid;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;

/**
 * Scouts an invented net of 100,000 km of roads and ranks what is found beside power lines, buildings and
 * the roads themselves. Prints kilometres, seconds, the highest use of the heap and the candidates.
 * {@code LinesBench [KM [ROUNDS]]}
 */
public final class LinesBench {

    private LinesBench() {
    }

    public static void main(String[] arguments) {
        double km = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 100_000;
        int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 3;
        List<MapFeature> roads = SyntheticRoads.of(km, MapRole.ROAD, 1);
        List<MapFeature> lines = SyntheticRoads.of(km / 10, MapRole.POWER_LINE, 2);
        List<MapFeature> buildings = SyntheticRoads.buildings((int) km, 3);
        double made = roads.stream().mapToDouble(r -> r.parts().get(0).roughLengthKm()).sum();
        long edges = roads.stream().mapToLong(MapFeature::size).sum() - roads.size();
        ScoutReach reach = new ScoutReach(10, 500);
        for (int round = 1; round <= rounds; round++) {
            long start = System.nanoTime();
            List<Candidate> found = LineScout.candidates(roads, reach, null);
            long scouted = System.nanoTime();
            List<Surroundings> around = List.of(Surroundings.of(MapRole.POWER_LINE, lines),
                    Surroundings.of(MapRole.BUILDING, buildings), Surroundings.of(MapRole.ROAD, roads));
            List<RankedCandidate> ranked = CandidateRanking.rank(found, reach, square -> 1, around, null);
            long end = System.nanoTime();
            System.out.printf("round %d: %.0f km, %d edges, %d candidates: scout %.2f s, index and rank %.2f s, in all %.2f s, heap %d MB%n",
                    round, made, edges, ranked.size(), (scouted - start) / 1e9, (end - scouted) / 1e9, (end - start) / 1e9,
                    peakHeapMb());
        }
    }

    /** Sum of the peaks of all pools, which is not less than the peak of the sum. */
    private static long peakHeapMb() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage).mapToLong(u -> u.getUsed()).sum() >> 20;
    }
}
