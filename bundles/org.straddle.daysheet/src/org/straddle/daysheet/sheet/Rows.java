package org.straddle.daysheet.sheet;

import java.util.ArrayList;
import java.util.List;

import org.straddle.sky.Window;

/** Rows of windows that do not overlap: each window goes to the first row that has room for it. */
final class Rows {

    private final List<List<Window>> rows = new ArrayList<>();

    int place(Window window) {
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).stream().noneMatch(window::overlaps)) {
                rows.get(row).add(window);
                return row;
            }
        }
        rows.add(new ArrayList<>(List.of(window)));
        return rows.size() - 1;
    }

    int count() {
        return rows.size();
    }
}
