package org.straddle.sky;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The answer of a {@link PassSearch}: how every bird shows itself at every viewpoint in one window. Immutable. */
public final class PassTable {

    private final Window window;
    private final Map<Viewpoint, Map<ElementSet, Visibility>> cells;

    PassTable(Window window, Map<Viewpoint, Map<ElementSet, Visibility>> cells) {
        this.window = window;
        this.cells = cells;
    }

    public Window window() {
        return window;
    }

    /** The viewpoints asked about, in the order given. */
    public Collection<Viewpoint> viewpoints() {
        return Collections.unmodifiableSet(cells.keySet());
    }

    /** How a bird shows itself; empty when it was not asked about. */
    public Optional<Visibility> visibility(Viewpoint viewpoint, ElementSet bird) {
        return Optional.ofNullable(cells.getOrDefault(viewpoint, Map.of()).get(bird));
    }

    /** The passes of one bird over a viewpoint, by time. */
    public List<Pass> passes(Viewpoint viewpoint, ElementSet bird) {
        return visibility(viewpoint, bird).map(Visibility::passes).orElse(List.of());
    }

    /** The passes of all birds over a viewpoint, by time. */
    public List<Pass> passes(Viewpoint viewpoint) {
        return cells.getOrDefault(viewpoint, Map.of()).values().stream().flatMap(v -> v.passes().stream())
                .sorted(Pass.IN_TIME_ORDER).toList();
    }

    /** How many passes the table holds. */
    public long passCount() {
        return cells.values().stream().flatMap(row -> row.values().stream()).mapToLong(v -> v.passes().size()).sum();
    }
}
