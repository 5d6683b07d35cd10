package org.straddle.ui.passes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import org.eclipse.nebula.widgets.nattable.sort.ISortModel;
import org.eclipse.nebula.widgets.nattable.sort.SortDirectionEnum;

/** By which columns the passes are sorted, the first one first; passes that tie stay in time order. */
final class PassOrder implements ISortModel {

    private record Key(int column, SortDirectionEnum direction) {
    }

    private final List<Key> keys = new ArrayList<>();
    private final Runnable changed;

    PassOrder(Runnable changed) {
        this.changed = changed;
    }

    Comparator<PassRow> comparator() {
        Comparator<PassRow> order = (a, b) -> 0;
        for (Key key : keys) {
            Comparator<PassRow> next = (a, b) -> getColumnComparator(key.column).compare(a, b);
            order = order.thenComparing(key.direction == SortDirectionEnum.DESC ? next.reversed() : next);
        }
        return order.thenComparing(row -> row.found().pass().aos());
    }

    @Override
    public List<Integer> getSortedColumnIndexes() {
        return keys.stream().map(Key::column).toList();
    }

    @Override
    public boolean isColumnIndexSorted(int column) {
        return getSortOrder(column) >= 0;
    }

    @Override
    public SortDirectionEnum getSortDirection(int column) {
        return keys.stream().filter(key -> key.column == column).map(Key::direction).findFirst()
                .orElse(SortDirectionEnum.NONE);
    }

    @Override
    public int getSortOrder(int column) {
        return getSortedColumnIndexes().indexOf(column);
    }

    @Override
    @SuppressWarnings("rawtypes")
    public List<Comparator> getComparatorsForColumnIndex(int column) {
        return Collections.singletonList(getColumnComparator(column));
    }

    @Override
    @SuppressWarnings({"unchecked", "rawtypes"})
    public Comparator<Object> getColumnComparator(int column) {
        return (a, b) -> ((Comparable) PassRow.COLUMNS.get(column).order().apply((PassRow) a))
                .compareTo(PassRow.COLUMNS.get(column).order().apply((PassRow) b));
    }

    @Override
    public void sort(int column, SortDirectionEnum direction, boolean accumulate) {
        if (!accumulate) {
            keys.clear();
        }
        keys.removeIf(key -> key.column == column);
        if (direction != SortDirectionEnum.NONE) {
            keys.add(new Key(column, direction));
        }
        changed.run();
    }

    @Override
    public void clear() {
        keys.clear();
        changed.run();
    }
}
