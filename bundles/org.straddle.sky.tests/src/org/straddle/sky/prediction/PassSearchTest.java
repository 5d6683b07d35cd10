package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Horizon;
import org.straddle.sky.Invented;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;

class PassSearchTest {

    private final List<ElementSet> birds = IntStream.range(0, 6)
            .mapToObj(i -> Invented.low("Tern-" + i, 500 + 100 * i, 98 - 10 * i, 60 * i, 45 * i)).toList();
    private final List<Viewpoint> viewpoints = IntStream.range(0, 5)
            .mapToObj(i -> new Viewpoint(Place.of(60 - 10 * i, 20 * i), Horizon.parse("0:" + i + " 180:5"))).toList();

    @Test
    void findsWhatEachBirdAloneFinds() {
        PassTable table = new PassSearch().find(Invented.DAY, birds, viewpoints, null);
        int passes = 0;
        for (ElementSet bird : birds) {
            Ephemeris ephemeris = Ephemeris.of(bird, Invented.DAY, null);
            for (Viewpoint v : viewpoints) {
                assertEquals(ephemeris.passes(v.place(), v.horizon()), table.passes(v, bird));
                passes += table.passes(v, bird).size();
            }
        }
        assertEquals(passes, table.passCount());
        for (Viewpoint v : viewpoints) {
            List<Pass> all = table.passes(v);
            for (int i = 1; i < all.size(); i++) {
                assertTrue(!all.get(i).aos().isBefore(all.get(i - 1).aos()));
            }
        }
        assertEquals(viewpoints, List.copyOf(table.viewpoints()));
    }

    @Test
    void computesOnlyWhatChanged() {
        PassSearch search = new PassSearch();
        search.find(Invented.DAY, birds, viewpoints, null);
        assertEquals(30, search.computedCount());
        search.find(Invented.DAY, birds, viewpoints, null);
        assertEquals(30, search.computedCount());
        List<Viewpoint> changed = new ArrayList<>(viewpoints);
        changed.set(2, new Viewpoint(viewpoints.get(2).place(), Horizon.flat(30)));
        PassTable table = search.find(Invented.DAY, birds, changed, null);
        assertEquals(36, search.computedCount());
        assertTrue(table.passes(changed.get(2)).stream().allMatch(p -> p.peakElevationDeg() >= 30));
    }

    @Test
    void forgetsBeyondItsBound() {
        PassSearch search = new PassSearch(EarthOrientation.none(), 2, 2000, 4000);
        for (int i = 0; i < 3; i++) {
            PassTable table = search.find(Invented.DAY, birds, viewpoints, null);
            assertTrue(search.rememberedBytes() <= 4000, "bytes " + search.rememberedBytes());
            assertEquals(new PassSearch().find(Invented.DAY, birds, viewpoints, null).passCount(), table.passCount());
        }
    }

    @Test
    void theCacheForgetsThoseLongestUnused() {
        BoundedCache<String, Integer> cache = new BoundedCache<>(10, Integer::longValue);
        cache.put("a", 4);
        cache.put("b", 4);
        cache.get("a");
        cache.put("c", 4);
        assertTrue(cache.get("b").isEmpty());
        assertEquals(4, cache.get("a").orElseThrow());
        cache.put("a", 1);
        assertEquals(5, cache.weight());
        cache.put("huge", 11);
        assertEquals(0, cache.size());
        assertEquals(0, cache.weight());
    }

    @Test
    void tellsProgressFromTheCallingThreadAlone() {
        Thread caller = Thread.currentThread();
        Set<Thread> others = new HashSet<>();
        AtomicInteger worked = new AtomicInteger();
        AtomicInteger total = new AtomicInteger();
        new PassSearch().find(Invented.DAY, birds, viewpoints, new NullProgressMonitor() {
            @Override
            public void beginTask(String name, int totalWork) {
                total.set(totalWork);
            }

            @Override
            public void worked(int work) {
                worked.addAndGet(work);
                if (Thread.currentThread() != caller) {
                    others.add(Thread.currentThread());
                }
            }
        });
        assertEquals(total.get(), worked.get());
        assertEquals(Set.of(), others);
    }

    /** A year of a thousand sites would take long; the cancelled search ends at once and leaves no thread behind. */
    @Test
    void stopsSoonAfterCancel() {
        List<Viewpoint> many = IntStream.range(0, 1000)
                .mapToObj(i -> new Viewpoint(Place.of(i * 0.08, i * 0.1), Horizon.parse("0:1 90:20 180:3 270:9"))).toList();
        Window year = Window.of(Invented.DAY.start(), Duration.ofDays(365));
        AtomicInteger asked = new AtomicInteger();
        NullProgressMonitor monitor = new NullProgressMonitor() {
            @Override
            public boolean isCanceled() {
                return asked.incrementAndGet() > 100;
            }
        };
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertThrows(OperationCanceledException.class,
                () -> new PassSearch().find(year, birds, many, monitor)));
    }

    @Test
    void noBirdsOrNoSites() {
        PassSearch search = new PassSearch();
        assertEquals(0, search.find(Invented.DAY, List.of(), viewpoints, null).passCount());
        assertEquals(0, search.find(Invented.DAY, birds, List.of(), null).passCount());
        assertTrue(search.find(Invented.DAY, birds, List.of(), null).visibility(viewpoints.get(0), birds.get(0)).isEmpty());
    }
}
