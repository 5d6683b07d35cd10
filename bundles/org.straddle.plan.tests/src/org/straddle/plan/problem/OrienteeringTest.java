package org.straddle.plan.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.bound.BoundedSearch;
import org.straddle.plan.bound.NativeSolvers;

/** The planner on the public form of its problem, against every set of routes there is. */
class OrienteeringTest {

    private static final double EQUAL = 1e-6;

    @BeforeAll
    static void loadSolvers() {
        assertEquals(Optional.empty(), NativeSolvers.failure());
    }

    /** Invented, in the public text form. */
    private static String text(long seed, int vertices) {
        Random random = new Random(seed);
        String part = seed % 2 == 0 ? "" : ".37"; // then distances are cut after the second decimal
        StringBuilder text = new StringBuilder("0 1 " + vertices + " 0\n0 0\n0 5 5 0 0 0 0 0 40\n");
        for (int vertex = 1; vertex <= vertices; vertex++) {
            double opening = random.nextInt(250) / 10.0;
            text.append("%d %d%s %d %d %d 0 0 %s %s%n".formatted(vertex, random.nextInt(12), part, random.nextInt(12),
                    1 + random.nextInt(3), 1 + random.nextInt(20), opening, opening + random.nextInt(60) / 10.0));
        }
        return text.toString();
    }

    private static final class EveryRoute {

        private final Orienteering instance;

        EveryRoute(Orienteering instance) {
            this.instance = instance;
        }

        /** In seconds of the planner's clock. */
        private int[] times(int vertex) {
            return IntStream.of(instance.times().get(vertex)).map(tenths -> 60 * tenths).toArray();
        }

        int best() {
            return best(0, 0, 0, times(0)[1]);
        }

        /** Most score from here on; a route that is home is followed by the next. */
        int best(int visited, int route, int at, int time) {
            int best = 0;
            if (at != 0 || visited == 0) {
                best = route + 1 < instance.routes() ? best(visited | 1 << 30, route + 1, 0, times(0)[1]) : 0;
            }
            for (int next = 1; next < instance.scores().size(); next++) {
                int[] of = times(next);
                int start = Math.max(of[1], time + instance.distance(at, next));
                if ((visited & 1 << next) == 0 && start <= of[2]
                        && start + of[0] + instance.distance(next, 0) <= times(0)[2]) {
                    best = Math.max(best, instance.scores().get(next)
                            + best(visited | 1 << next, route, next, start + of[0]));
                }
            }
            return best;
        }
    }

    @Test
    void routesAreTheBestThereAre() {
        int all = 0;
        for (long seed = 0; seed < 25; seed++) {
            Orienteering instance = Orienteering.parse(text(seed, 7), 1 + (int) (seed % 3));
            int best = new EveryRoute(instance).best();
            BoundedSearch.Found found = BoundedSearch.search(instance.problem(), PlanSettings.ofIterations(600, seed),
                    PlanProgress.SILENT, new NullProgressMonitor());
            assertEquals(best, found.plan().roster().worth(), EQUAL, "seed " + seed);
            List<Route> plan = IntStream.range(0, instance.routes()).mapToObj(found.plan().roster()::route).toList();
            assertEquals(best, instance.score(plan), "seed " + seed);
            assertTrue(found.upperBound().getAsDouble() >= best - EQUAL, "seed " + seed);
            all += best;
        }
        assertTrue(all > 25 * 10, "only " + all + " in all: nothing was tried");
    }

    /**
     * Solomon's c101 (Operations Research 35, 1987) in the public orienteering form. The published best score of one
     * route is 320, from memory; the bound proves that no route has more.
     */
    @Test
    void aPublicInstanceIsSolvedToItsPublishedScore() throws IOException {
        try (InputStream file = getClass().getResourceAsStream("solomon-c101.txt")) {
            Orienteering instance = Orienteering.parse(new String(file.readAllBytes(), StandardCharsets.US_ASCII), 1);
            assertEquals(101, instance.scores().size());
            BoundedSearch.Found found = BoundedSearch.search(instance.problem(), PlanSettings.ofIterations(50_000, 1),
                    PlanProgress.SILENT, new NullProgressMonitor());
            assertEquals(320, instance.score(List.of(found.plan().roster().route(0))));
            assertEquals(320, found.upperBound().getAsDouble(), 1e-3);
        }
    }

    @Test
    void whatIsNoVertexIsNamed() {
        String head = "0 1 1 0\n0 0\n0 5 5 0 0 0 0 0 40\n";
        for (String bad : List.of("1 5 5 x", "1 5 5", "1 2 3 4 5 0 0 9 8", "1 2 3 4 5 0 0 9 1e9", "\u0000\u0001", "1 2 3 -4 5 0 0 8 9")) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> Orienteering.parse(head + bad, 1))
                    .getMessage().startsWith("line 4"), bad);
        }
        assertThrows(IllegalArgumentException.class, () -> Orienteering.parse("", 1));
        assertThrows(IllegalArgumentException.class, () -> Orienteering.parse(head, 1));
    }
}
