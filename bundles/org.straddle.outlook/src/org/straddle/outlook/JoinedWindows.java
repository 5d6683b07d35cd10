package org.straddle.outlook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.straddle.sky.Window;

/** The union of windows: in time order, with those that touch or overlap joined into one. */
public final class JoinedWindows {

    private JoinedWindows() {
    }

    public static List<Window> of(Collection<Window> windows) {
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
}
