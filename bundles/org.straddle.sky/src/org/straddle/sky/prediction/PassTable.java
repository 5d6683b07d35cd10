package org.straddle.sky.prediction;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.sky.ElementSet;
import org.straddle.sky.Pass;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;

/** The answer of a {@link PassSearch}: how every bird shows itself at every viewpoint in one window. Immutable. */
public final class PassTable {

    private final Window window;
    private final List<Viewpoint> viewpoints;
    private final List<Visibility[]> columns;
    private final Map<Viewpoint, Integer> rowOf = new HashMap<>();
    private final Map<ElementSet, Integer> columnOf = new HashMap<>();

    /** @param columns for each bird, how it shows itself at each viewpoint, both in the order given; not to be written to */
    PassTable(Window window, List<Viewpoint> viewpoints, List<ElementSet> birds, List<Visibility[]> columns) {
        this.window = window;
        this.viewpoints = viewpoints;
        this.columns = columns;
        for (int i = 0; i < viewpoints.size(); i++) {
            rowOf.put(viewpoints.get(i), i);
        }
        for (int i = 0; i < birds.size(); i++) {
            columnOf.put(birds.get(i), i);
        }
    }

    public Window window() {
        return window;
    }

    /** The viewpoints asked about, in the order given. */
    public Collection<Viewpoint> viewpoints() {
        return viewpoints;
    }

    /** How a bird shows itself; empty when it was not asked about. */
    public Optional<Visibility> visibility(Viewpoint viewpoint, ElementSet bird) {
        Integer row = rowOf.get(viewpoint);
        Integer column = columnOf.get(bird);
        return row == null || column == null ? Optional.empty() : Optional.of(columns.get(column)[row]);
    }

    /** The passes of one bird over a viewpoint, by time. */
    public List<Pass> passes(Viewpoint viewpoint, ElementSet bird) {
        return visibility(viewpoint, bird).map(Visibility::passes).orElse(List.of());
    }

    /** The passes of all birds over a viewpoint, by time. */
    public List<Pass> passes(Viewpoint viewpoint) {
        List<Pass> passes = new ArrayList<>();
        Integer row = rowOf.get(viewpoint);
        if (row != null) {
            columns.forEach(column -> passes.addAll(column[row].passes()));
        }
        passes.sort(Pass.IN_TIME_ORDER);
        return List.copyOf(passes);
    }

    /** How many passes the table holds. */
    public long passCount() {
        long count = 0;
        for (Visibility[] column : columns) {
            for (Visibility cell : column) {
                count += cell.passes().size();
            }
        }
        return count;
    }
}
