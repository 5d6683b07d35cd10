package org.straddle.sky;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;

/**
 * The passes of many birds over many viewpoints, on several threads.
 *
 * <p>Keep one search and ask it again: it remembers what it computed by its inputs, so after one
 * site's mask has changed only that site is computed anew, from the remembered ephemerides. The
 * memory is bounded. Safe for use by many threads.
 */
public final class PassSearch {

    /** About 50 MB of grid nodes: 50 birds for two weeks. */
    private static final long MOST_NODES = 1_000_000;
    /** About 50 MB of passes. */
    private static final long MOST_PASSES = 400_000;
    /** A cancelled monitor is noticed within this time. */
    private static final long CANCEL_CHECK_MS = 20;

    private record BirdKey(ElementSet bird, Window window) {
    }

    private record CellKey(ElementSet bird, Window window, Viewpoint viewpoint) {
    }

    private record Column(ElementSet bird, Map<Viewpoint, Visibility> cells) {
    }

    private final EarthOrientation orientation;
    private final int threads;
    private final BoundedCache<BirdKey, Ephemeris> ephemerides;
    private final BoundedCache<CellKey, Visibility> cells;
    private final AtomicLong computed = new AtomicLong();

    /** A search on all processors, two at least, without Earth orientation data. */
    public PassSearch() {
        this(EarthOrientation.none());
    }

    public PassSearch(EarthOrientation orientation) {
        this(orientation, Math.max(2, Runtime.getRuntime().availableProcessors()), MOST_NODES, MOST_PASSES);
    }

    /**
     * @param mostNodes  bound on remembered ephemeris nodes, some 50 bytes each
     * @param mostPasses bound on remembered passes, some 120 bytes each
     */
    PassSearch(EarthOrientation orientation, int threads, long mostNodes, long mostPasses) {
        this.orientation = orientation;
        this.threads = threads;
        this.ephemerides = new BoundedCache<>(mostNodes, Ephemeris::nodeCount);
        this.cells = new BoundedCache<>(mostPasses, v -> 1 + v.passes().size());
    }

    /**
     * Finds all passes in a window.
     *
     * @param monitor told of progress by the calling thread alone; may be null
     * @throws ElementSetException        if the model refuses a bird's elements; the message names it
     * @throws IllegalArgumentException   if the window is longer than 400 days
     * @throws OperationCanceledException within a tenth of a second of cancellation
     */
    public PassTable find(Window window, Collection<ElementSet> birds, Collection<Viewpoint> viewpoints,
            IProgressMonitor monitor) {
        IProgressMonitor told = monitor == null ? new NullProgressMonitor() : monitor;
        List<ElementSet> distinctBirds = List.copyOf(new LinkedHashSet<>(birds));
        List<Viewpoint> distinctViewpoints = List.copyOf(new LinkedHashSet<>(viewpoints));
        told.beginTask("Finding passes", Math.max(1, distinctBirds.size()));
        // Workers must not touch the caller's monitor: it need not stand several threads.
        IProgressMonitor stop = new NullProgressMonitor();
        ExecutorService workers = Executors.newFixedThreadPool(threads, PassSearch::worker);
        try {
            CompletionService<Column> columns = new ExecutorCompletionService<>(workers);
            for (ElementSet bird : distinctBirds) {
                columns.submit(() -> column(bird, window, distinctViewpoints, stop));
            }
            Map<ElementSet, Column> done = new LinkedHashMap<>();
            while (done.size() < distinctBirds.size()) {
                if (told.isCanceled()) {
                    throw new OperationCanceledException();
                }
                Future<Column> next = columns.poll(CANCEL_CHECK_MS, TimeUnit.MILLISECONDS);
                if (next != null) {
                    Column column = next.get();
                    done.put(column.bird, column);
                    told.worked(1);
                }
            }
            return table(window, distinctBirds, distinctViewpoints, done);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new OperationCanceledException();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e.getCause());
        } finally {
            stop.setCanceled(true);
            workers.shutdownNow();
            told.done();
        }
    }

    /**
     * A bird's ephemeris, remembered like those of {@link #find}.
     *
     * @throws ElementSetException if the model refuses the elements
     */
    public Ephemeris ephemeris(ElementSet bird, Window window, IProgressMonitor monitor) {
        BirdKey key = new BirdKey(bird, window);
        Optional<Ephemeris> known = ephemerides.get(key);
        if (known.isPresent()) {
            return known.get();
        }
        Ephemeris ephemeris = Ephemeris.of(bird, window, orientation, monitor);
        ephemerides.put(key, ephemeris);
        return ephemeris;
    }

    public EarthOrientation orientation() {
        return orientation;
    }

    private Column column(ElementSet bird, Window window, List<Viewpoint> viewpoints, IProgressMonitor stop) {
        Map<Viewpoint, Visibility> column = new LinkedHashMap<>();
        // Held here as well: one too large to be remembered must not be computed for every site.
        Ephemeris ephemeris = null;
        for (Viewpoint viewpoint : viewpoints) {
            if (stop.isCanceled()) {
                throw new OperationCanceledException();
            }
            CellKey key = new CellKey(bird, window, viewpoint);
            Visibility visibility = cells.get(key).orElse(null);
            if (visibility == null) {
                ephemeris = ephemeris == null ? ephemeris(bird, window, stop) : ephemeris;
                visibility = ephemeris.visibility(viewpoint.place(), viewpoint.horizon());
                computed.incrementAndGet();
                cells.put(key, visibility);
            }
            column.put(viewpoint, visibility);
        }
        return new Column(bird, column);
    }

    private static PassTable table(Window window, List<ElementSet> birds, List<Viewpoint> viewpoints,
            Map<ElementSet, Column> columns) {
        Map<Viewpoint, Map<ElementSet, Visibility>> rows = new LinkedHashMap<>();
        for (Viewpoint viewpoint : viewpoints) {
            rows.put(viewpoint, new LinkedHashMap<>());
        }
        for (ElementSet bird : birds) {
            columns.get(bird).cells.forEach((viewpoint, visibility) -> rows.get(viewpoint).put(bird, visibility));
        }
        return new PassTable(window, rows);
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "pass search");
        thread.setDaemon(true);
        return thread;
    }

    /** How many (bird, viewpoint) pairs were computed so far, not remembered. */
    long computedCount() {
        return computed.get();
    }

    /** Weight of what is remembered: passes and one for each pair. */
    long rememberedWeight() {
        return cells.weight();
    }
}
