package org.straddle.ui.kit;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.straddle.kit.energy.DayEnergy;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * What is left in the batteries over the hours of each day: one band for each day and supply, turns as bars under the line, a
 * dashed line at empty. Short days are said in words and by a sign, not by colour alone.
 */
final class EnergyChart extends Canvas {

    private static final Catalogue TEXTS = Catalogue.of(EnergyChart.class);

    private static final int MARGIN = 10;
    private static final int LEAST_BAND = 70;
    private static final int LEAST_PLOT = 12;

    private List<TeamEnergy> supplies = List.of();
    private ZoneId zone = ZoneId.of("UTC");

    EnergyChart(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        setForeground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        addPaintListener(event -> paint(event.gc));
        getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = String.join(" ", TeamEnergy.lines(supplies))));
    }

    void show(List<TeamEnergy> shown, ZoneId eventZone) {
        supplies = List.copyOf(shown);
        zone = eventZone;
        redraw();
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        Rectangle area = getClientArea();
        long bands = supplies.stream().mapToLong(supply -> supply.days().size()).sum();
        if (bands == 0) {
            return;
        }
        int height = (int) Math.max(LEAST_BAND, (area.height - MARGIN) / bands);
        int y = MARGIN / 2;
        for (TeamEnergy supply : supplies) {
            for (DayEnergy day : supply.days()) {
                band(gc, supply, day, new Rectangle(MARGIN, y, area.width - 2 * MARGIN, height - MARGIN / 2));
                y += height;
            }
        }
    }

    private void band(GC gc, TeamEnergy supply, DayEnergy day, Rectangle room) {
        String title = TEXTS.text("chart.day", "day", LocalDate.parse(day.day()), "supply", supply.supply(), "morning", day.morningWh(),
                "margin", Math.abs(day.marginWh()), "short", day.marginWh() < 0 ? "yes" : "no");
        Point letters = gc.textExtent(title);
        gc.setForeground(getForeground());
        gc.drawText(title, room.x, room.y, true);
        Rectangle plot = new Rectangle(room.x, room.y + letters.y + 2, room.width, room.height - 2 * letters.y - 4);
        Optional<EnergyCurve> drawn = plot.height < LEAST_PLOT ? Optional.empty() : EnergyCurve.of(day, plot);
        if (drawn.isEmpty()) {
            return;
        }
        EnergyCurve curve = drawn.get();
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        gc.drawRectangle(plot);
        gc.setLineStyle(SWT.LINE_DASH);
        gc.drawLine(plot.x, curve.emptyY(), plot.x + plot.width, curve.emptyY());
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setForeground(getForeground());
        gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        curve.turns().forEach(gc::fillRectangle);
        gc.setLineWidth(2);
        gc.drawPolyline(curve.line().stream().flatMapToInt(point -> IntStream.of(point.x, point.y)).toArray());
        gc.setLineWidth(1);
        gc.setBackground(getBackground());
        hours(gc, plot, curve.from(), curve.until());
    }

    private void hours(GC gc, Rectangle plot, Instant from, Instant until) {
        TimeText times = TimeText.of(zone);
        gc.drawText(times.clock(from), plot.x, plot.y + plot.height + 1, true);
        String end = times.clock(until);
        gc.drawText(end, plot.x + plot.width - gc.textExtent(end).x, plot.y + plot.height + 1, true);
        int free = plot.x + gc.textExtent(times.clock(from)).x + MARGIN;
        for (Instant hour = from.plus(Duration.ofHours(1)); hour.isBefore(until); hour = hour.plus(Duration.ofHours(1))) {
            Instant whole = hour.minusSeconds(Math.floorMod(hour.getEpochSecond(), 3600L));
            int x = EnergyCurve.x(plot, from, until, whole);
            String text = times.clock(whole);
            int wide = gc.textExtent(text).x;
            if (x - wide / 2 > free && x + wide / 2 < plot.x + plot.width - wide - MARGIN) {
                gc.drawText(text, x - wide / 2, plot.y + plot.height + 1, true);
                gc.drawLine(x, plot.y + plot.height - 3, x, plot.y + plot.height);
                free = x + wide / 2 + MARGIN;
            }
        }
    }
}
