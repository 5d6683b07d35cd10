package org.straddle.ui.kit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.straddle.kit.energy.DayEnergy;

/**
 * Where the course of a day lies in a picture, in pixels.
 *
 * @param from   at the left edge
 * @param until  at the right edge
 * @param line   what is left in the batteries, from the left edge to the right one
 * @param turns  bars at the lower edge
 * @param emptyY where nothing is left
 */
record EnergyCurve(Instant from, Instant until, List<Point> line, List<Rectangle> turns, int emptyY) {

    private static final int BAR = 6;
    private static final int LEAST_TURN = 2;

    EnergyCurve {
        line = List.copyOf(line);
        turns = List.copyOf(turns);
    }

    /** Empty when nobody knows at what time anything is drawn. */
    static Optional<EnergyCurve> of(DayEnergy day, Rectangle plot) {
        List<DayEnergy.Left> course = day.course().stream().filter(left -> left.spell().start() != null).toList();
        if (course.isEmpty()) {
            return Optional.empty();
        }
        Instant from = course.get(0).spell().start();
        Instant until = course.stream().filter(left -> left.spell().isTurn() || course.size() == 1)
                .map(left -> left.spell().start().plus(left.spell().length())).max(Instant::compareTo).orElse(from);
        double top = Math.max(day.morningWh(), 1);
        double bottom = Math.min(0, day.marginWh());
        List<Point> line = new ArrayList<>(List.of(new Point(plot.x, y(plot, top, bottom, day.morningWh()))));
        List<Rectangle> turns = new ArrayList<>();
        double before = day.morningWh();
        for (DayEnergy.Left left : course) {
            int x = x(plot, from, until, left.spell().start());
            int end = x;
            // waiting goes on between the turns; it is drawn at the start of the stop, as it is reckoned
            if (left.spell().isTurn()) {
                end = Math.max(x + LEAST_TURN, x(plot, from, until, left.spell().start().plus(left.spell().length())));
                turns.add(new Rectangle(x, plot.y + plot.height - BAR, end - x, BAR));
            }
            line.add(new Point(x, y(plot, top, bottom, before)));
            line.add(new Point(end, y(plot, top, bottom, left.wh())));
            before = left.wh();
        }
        line.add(new Point(plot.x + plot.width, y(plot, top, bottom, before)));
        return Optional.of(new EnergyCurve(from, until, line, turns, y(plot, top, bottom, 0)));
    }

    static int x(Rectangle plot, Instant from, Instant until, Instant at) {
        double whole = Math.max(1, Duration.between(from, until).toSeconds());
        return plot.x + (int) Math.round(plot.width * Duration.between(from, at).toSeconds() / whole);
    }

    private static int y(Rectangle plot, double top, double bottom, double wh) {
        return plot.y + (int) Math.round(plot.height * (top - wh) / (top - bottom));
    }
}
