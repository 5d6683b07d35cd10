package org.straddle.sky.prediction;

import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
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
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * The passes of many birds over many viewpoints, on several threads.
 *
 * <p>Keep one search and ask it again: it remembers what it computed by its inputs, so after one
 * site's mask has changed only that site is computed anew, from the remembered ephemerides. The
 * memory is bounded. Safe for use by many threads.
 */
public final class PassSearch {

    private static final Catalogue TEXTS = Catalogue.of(PassSearch.class);

    /** About 50 MB of grid nodes: 50 birds for two weeks. */
    private static final long MOST_NODES = 1_000_000;
    /** Passes packed: five million, or 30 birds over a thousand sites for three weeks. */
    private static final long MOST_BYTES = 256L << 20;
    /** But no more than this part of the memory the program may take. */
    private static final int SHARE_OF_HEAP = 4;
    /** Some 200 bytes each. */
    private static final long MOST_NUMBERS = 50_000;
    /** A cancelled monitor is noticed within this time. */
    private static final long CANCEL_CHECK_MS = 20;

    private record BirdKey(ElementSet bird, Window window) {
    }

    /** A bird in a window, and a viewpoint, by number. */
    private record CellKey(int bird, int viewpoint) {
        @Override
        public int hashCode() {
            // Numbers are small and dense: spread one of them, or many keys would share a hash.
            return bird * 0x9E3779B9 + viewpoint;
        }
    }

    private final EarthOrientation orientation;
    private final int threads;
    private final BoundedCache<BirdKey, Ephemeris> ephemerides;
    private final BoundedCache<CellKey, Visibility> cells;
    /**
     * Keys are long records, and a table has many cells: each key is looked up once for a search, and its
     * cells by its number. A key that is forgotten gets a new number, and its old cells are never asked for.
     */
    private final BoundedCache<Object, Integer> numbers = new BoundedCache<>(MOST_NUMBERS, n -> 1);
    private final AtomicInteger lastNumber = new AtomicInteger();
    /**
     * The table found last, while there is memory: the next search mostly differs from it by one site, and comparing
     * numbers in order is much faster than looking up tens of thousands of cells.
     */
    private volatile SoftReference<Map<Integer, Column>> last = new SoftReference<>(null);
    private final AtomicLong computed = new AtomicLong();

    /** A search on all processors, two at least, without Earth orientation data. */
    public PassSearch() {
        this(EarthOrientation.none());
    }

    public PassSearch(EarthOrientation orientation) {
        this(orientation, Math.max(2, Runtime.getRuntime().availableProcessors()), MOST_NODES,
                Math.min(MOST_BYTES, Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP));
    }

    /**
     * @param mostNodes bound on remembered ephemeris nodes, some 50 bytes each
     * @param mostBytes bound on the memory of remembered passes
     */
    PassSearch(EarthOrientation orientation, int threads, long mostNodes, long mostBytes) {
        this.orientation = orientation;
        this.threads = threads;
        this.ephemerides = new BoundedCache<>(mostNodes, Ephemeris::nodeCount);
        this.cells = new BoundedCache<>(mostBytes, v -> PassList.bytes(v.passes().size()));
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
        told.beginTask(TEXTS.text("passSearch.findingPasses"), Math.max(1, distinctBirds.size()));
        try {
            int[] viewpointNumbers = distinctViewpoints.stream().mapToInt(this::number).toArray();
            List<Column> columns = distinctBirds.stream()
                    .map(bird -> new Column(bird, window, distinctViewpoints, viewpointNumbers)).toList();
            Map<Integer, Column> before = Optional.ofNullable(last.get()).orElse(Map.of());
            List<Column> unfinished = new ArrayList<>();
            for (Column column : columns) {
                if (told.isCanceled()) {
                    throw new OperationCanceledException();
                }
                if (column.remembered(before.get(column.number))) {
                    told.worked(1);
                } else {
                    unfinished.add(column);
                }
            }
            if (!unfinished.isEmpty()) {
                compute(unfinished, Column::compute, told);
            }
            last = new SoftReference<>(columns.stream().collect(Collectors.toMap(column -> column.number, column -> column)));
            return new PassTable(window, distinctViewpoints, distinctBirds,
                    columns.stream().map(column -> column.found).toList());
        } finally {
            told.done();
        }
    }

    /**
     * The ephemerides of several birds, remembered like those of {@link #find}.
     *
     * @param monitor told of progress by the calling thread alone; may be null
     * @return by bird, in the order given; held even where they are too many to be remembered
     * @throws ElementSetException        if the model refuses a bird's elements; the message names it
     * @throws OperationCanceledException within a tenth of a second of cancellation
     */
    public Map<ElementSet, Ephemeris> ephemerides(Collection<ElementSet> birds, Window window, IProgressMonitor monitor) {
        IProgressMonitor told = monitor == null ? new NullProgressMonitor() : monitor;
        Map<ElementSet, Ephemeris> found = Collections.synchronizedMap(new LinkedHashMap<>());
        birds.forEach(bird -> found.put(bird, null));
        told.beginTask(TEXTS.text("passSearch.findingPasses"), Math.max(1, found.size()));
        try {
            if (!found.isEmpty()) {
                compute(List.copyOf(found.keySet()), (bird, stop) -> found.put(bird, ephemeris(bird, window, stop)), told);
            }
            return new LinkedHashMap<>(found);
        } finally {
            told.done();
        }
    }

    /** Does a part of the work for each subject, on several threads. @param part also takes a monitor to ask for cancellation */
    private <T> void compute(List<T> subjects, BiConsumer<T, IProgressMonitor> part, IProgressMonitor told) {
        // Workers must not touch the caller's monitor: it need not stand several threads.
        IProgressMonitor stop = new NullProgressMonitor();
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(threads, subjects.size()), PassSearch::worker);
        try {
            CompletionService<Void> done = new ExecutorCompletionService<>(workers);
            subjects.forEach(subject -> done.submit(() -> part.accept(subject, stop), null));
            for (int left = subjects.size(); left > 0;) {
                if (told.isCanceled()) {
                    throw new OperationCanceledException();
                }
                Future<Void> next = done.poll(CANCEL_CHECK_MS, TimeUnit.MILLISECONDS);
                if (next != null) {
                    next.get();
                    told.worked(1);
                    left--;
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new OperationCanceledException();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e.getCause());
        } finally {
            stop.setCanceled(true);
            workers.shutdownNow();
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

    private int number(Object key) {
        return numbers.get(key).orElseGet(() -> {
            int number = lastNumber.incrementAndGet();
            numbers.put(key, number);
            return number;
        });
    }

    /** One bird over all viewpoints of a search: the part that one worker does. */
    private final class Column {
        private final ElementSet bird;
        private final Window window;
        private final List<Viewpoint> viewpoints;
        private final int number;
        private final int[] viewpointNumbers;
        private final Visibility[] found;

        Column(ElementSet bird, Window window, List<Viewpoint> viewpoints, int[] viewpointNumbers) {
            this.bird = bird;
            this.window = window;
            this.viewpoints = viewpoints;
            this.viewpointNumbers = viewpointNumbers;
            this.number = number(new BirdKey(bird, window));
            this.found = new Visibility[viewpoints.size()];
        }

        /**
         * Fills in what is remembered; whether that is all.
         *
         * @param before the same bird's column of the search before; may be null
         */
        boolean remembered(Column before) {
            boolean all = true;
            for (int i = 0; i < found.length; i++) {
                boolean same = before != null && i < before.found.length
                        && before.viewpointNumbers[i] == viewpointNumbers[i];
                found[i] = same ? before.found[i] : cells.get(new CellKey(number, viewpointNumbers[i])).orElse(null);
                all &= found[i] != null;
            }
            return all;
        }

        /** Fills in the rest. */
        void compute(IProgressMonitor stop) {
            // Held here as well: one too large to be remembered must not be computed for every site.
            Ephemeris ephemeris = ephemeris(bird, window, stop);
            for (int i = 0; i < found.length; i++) {
                if (stop.isCanceled()) {
                    throw new OperationCanceledException();
                }
                if (found[i] == null) {
                    found[i] = ephemeris.visibility(viewpoints.get(i).place(), viewpoints.get(i).horizon());
                    computed.incrementAndGet();
                    cells.put(new CellKey(number, viewpointNumbers[i]), found[i]);
                }
            }
        }
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, TEXTS.text("passSearch.passSearch"));
        thread.setDaemon(true);
        return thread;
    }

    /** How many (bird, viewpoint) pairs were computed so far, not remembered. */
    long computedCount() {
        return computed.get();
    }

    /** Memory of what is remembered, about, bytes. */
    long rememberedBytes() {
        return cells.weight();
    }
}
