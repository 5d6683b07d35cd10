package org.straddle.outlook.itinerary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.straddle.sky.Window;

class OverlapsTest {

    /** Against comparing every pair. */
    @Test
    void findsThePairsThatTryingAllFinds() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            List<Window> windows = new ArrayList<>();
            for (int i = 0; i < random.nextInt(12); i++) {
                Instant start = Instant.ofEpochSecond(random.nextInt(20));
                windows.add(new Window(start, start.plusSeconds(1 + random.nextInt(8))));
            }
            windows.sort(Window.IN_TIME_ORDER);
            Set<String> all = new TreeSet<>();
            for (int i = 0; i < windows.size(); i++) {
                for (int j = i + 1; j < windows.size(); j++) {
                    if (windows.get(i).overlaps(windows.get(j))) {
                        all.add(i + "-" + j);
                    }
                }
            }
            Set<String> found = new TreeSet<>();
            List<Integer> indices = IntStream.range(0, windows.size()).boxed().toList();
            Overlaps.pairs(indices, windows::get, (a, b) -> found.add(a + "-" + b));
            assertEquals(all, found);
        }
    }
}
