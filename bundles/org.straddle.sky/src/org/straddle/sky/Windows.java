package org.straddle.sky;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** Sets of instants, written as windows in time order that neither overlap nor touch: their union, intersection and difference. */
public final class Windows {

    private Windows() {
    }

    /** The times that lie in any of the windows: those that touch or overlap become one. */
    public static List<Window> joined(Collection<Window> windows) {
        List<Window> joined = new ArrayList<>();
        for (Window next : windows.stream().sorted(Window.IN_TIME_ORDER).toList()) {
            int last = joined.size() - 1;
            if (last >= 0 && !joined.get(last).end().isBefore(next.start())) {
                Window before = joined.get(last);
                joined.set(last, before.end().isBefore(next.end()) ? new Window(before.start(), next.end()) : before);
            } else {
                joined.add(next);
            }
        }
        return List.copyOf(joined);
    }

    /**
     * The times that lie in a window of each list, in order.
     *
     * @param a windows in time order that do not overlap
     * @param b windows in time order that do not overlap
     */
    public static List<Window> common(List<Window> a, List<Window> b) {
        List<Window> common = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < a.size() && j < b.size()) {
            a.get(i).intersection(b.get(j)).ifPresent(common::add);
            if (a.get(i).end().isBefore(b.get(j).end())) {
                i++;
            } else {
                j++;
            }
        }
        return List.copyOf(common);
    }

    /**
     * The times of the windows that lie in one window, in order.
     *
     * @param windows in time order that do not overlap; those before the one are skipped by halves
     */
    public static List<Window> clipped(List<Window> windows, Window to) {
        int first = 0;
        int beyond = windows.size();
        while (first < beyond) {
            int middle = (first + beyond) / 2;
            if (windows.get(middle).end().isAfter(to.start())) {
                beyond = middle;
            } else {
                first = middle + 1;
            }
        }
        List<Window> clipped = new ArrayList<>();
        for (int i = first; i < windows.size() && windows.get(i).start().isBefore(to.end()); i++) {
            windows.get(i).intersection(to).ifPresent(clipped::add);
        }
        return clipped;
    }

    /**
     * The times of the windows that lie in none of those taken.
     *
     * @param windows in time order, none overlapping another
     * @param taken   in any order
     */
    public static List<Window> without(List<Window> windows, Collection<Window> taken) {
        List<Window> left = windows;
        for (Window gone : taken) {
            left = left.stream().flatMap(window -> without(window, gone)).toList();
        }
        return List.copyOf(left);
    }

    private static Stream<Window> without(Window window, Window taken) {
        if (!window.overlaps(taken)) {
            return Stream.of(window);
        }
        Stream<Window> before = window.start().isBefore(taken.start())
                ? Stream.of(new Window(window.start(), taken.start())) : Stream.empty();
        Stream<Window> after = taken.end().isBefore(window.end())
                ? Stream.of(new Window(taken.end(), window.end())) : Stream.empty();
        return Stream.concat(before, after);
    }
}
