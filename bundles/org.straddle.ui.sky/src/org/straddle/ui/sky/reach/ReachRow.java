package org.straddle.ui.sky.reach;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.straddle.sky.Window;
import org.straddle.sky.prediction.CommonView;

/**
 * Somebody who may be reached.
 *
 * @param sharePercent of all chasers; NaN for a square
 * @param cells        for each slice, per cent of the chasers who have the bird up, or for a square the elevation
 *                     there, degrees; empty when nobody there has it
 * @param views        when the place can be worked from the site, in order
 * @param mean         part of it that has the bird up, on average over the pass, 0 to 1; NaN for a square
 * @param ever         part that has it up at some time, 0 to 1; NaN for a square
 */
public record ReachRow(Kind kind, String name, double sharePercent, List<OptionalDouble> cells, List<CommonView> views,
        double mean, double ever) {

    /** What a row stands for. */
    public enum Kind {
        EVERYBODY, REGION, SQUARE
    }

    public ReachRow {
        cells = List.copyOf(cells);
        views = List.copyOf(views);
    }

    /** From the first time to the last, gaps included. */
    public Optional<Window> span() {
        return views.isEmpty() ? Optional.empty()
                : Optional.of(new Window(views.get(0).window().start(), views.get(views.size() - 1).window().end()));
    }

    public Duration lasts() {
        return views.stream().map(view -> view.window().duration()).reduce(Duration.ZERO, Duration::plus);
    }

    /** Where the lower of the two elevations is highest. */
    public Optional<CommonView> best() {
        return views.stream().max(Comparator.comparingDouble(CommonView::lowerDeg));
    }
}
