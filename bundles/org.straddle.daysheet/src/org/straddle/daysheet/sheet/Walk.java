package org.straddle.daysheet.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.sky.Window;

/** Ways from one stop or turn to another with keys. */
public record Walk(DaySheet sheet) {

    /** In reading order: a stop, its turns, the next stop, the next lane; empty at the end. */
    public Optional<SheetItem> next(Optional<SheetItem> from) {
        return step(sheet.items(), from, 1);
    }

    public Optional<SheetItem> previous(Optional<SheetItem> from) {
        return step(sheet.items(), from, -1);
    }

    /** Within the lane. */
    public Optional<SheetItem> later(SheetItem from) {
        return step(lane(from).items(), Optional.of(from), 1);
    }

    public Optional<SheetItem> earlier(SheetItem from) {
        return step(lane(from).items(), Optional.of(from), -1);
    }

    /** What the next lane downwards that has anything does nearest to that time. */
    public Optional<SheetItem> below(SheetItem from) {
        return beside(from, 1);
    }

    public Optional<SheetItem> above(SheetItem from) {
        return beside(from, -1);
    }

    private Optional<SheetItem> beside(SheetItem from, int step) {
        List<Lane> lanes = sheet.lanes();
        for (int i = lanes.indexOf(lane(from)) + step; i >= 0 && i < lanes.size(); i += step) {
            Optional<SheetItem> nearest = lanes.get(i).items().stream()
                    .filter(item -> item.getClass() == from.getClass())
                    .min(Comparator.comparing(item -> Duration.between(middle(from), middle(item)).abs()));
            if (nearest.isPresent()) {
                return nearest;
            }
        }
        return Optional.empty();
    }

    private static Instant middle(SheetItem item) {
        Window window = item.window();
        return window.start().plus(window.duration().dividedBy(2));
    }

    private Lane lane(SheetItem item) {
        return sheet.lanes().stream().filter(lane -> lane.items().contains(item)).findFirst().orElseThrow();
    }

    private static Optional<SheetItem> step(List<SheetItem> items, Optional<SheetItem> from, int step) {
        int start = from.map(items::indexOf).filter(i -> i >= 0).map(i -> i + step)
                .orElse(step > 0 ? 0 : items.size() - 1);
        return start >= 0 && start < items.size() ? Optional.of(items.get(start)) : Optional.empty();
    }
}
