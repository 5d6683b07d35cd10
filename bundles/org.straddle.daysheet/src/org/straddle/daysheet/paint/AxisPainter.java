package org.straddle.daysheet.paint;

import java.util.Optional;

import org.straddle.daysheet.layout.Axis;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.DayTab;
import org.straddle.daysheet.layout.Label;
import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke.Dash;

/** Draws days and hours at the head of the sheet. */
final class AxisPainter {

    private static final int TICK = 3;

    private final Brush pen;

    AxisPainter(Brush pen) {
        this.pen = pen;
    }

    void paint(DaySheetLayout layout) {
        Axis axis = layout.axis();
        pen.fill(axis.box(), Palette.HEAD);
        axis.days().forEach(this::day);
        row(axis.utcRow(), axis.utcName(), Palette.INK, axis.box());
        row(axis.localRow(), axis.localName(), Palette.QUIET, axis.box());
        axis.utc().forEach(label -> tick(label, axis.utcRow(), true));
        axis.local().forEach(label -> tick(label, axis.localRow(), false));
        pen.line(Palette.LINE, 1, Dash.SOLID);
        pen.surface().drawLine(0, axis.box().bottom() - 1, axis.box().right(), axis.box().bottom() - 1);
        pen.surface().drawLine(layout.body().x() - 1, 0, layout.body().x() - 1, axis.box().bottom());
    }

    /** Lines through the lanes at hours and, stronger, between days. */
    void grid(DaySheetLayout layout) {
        Box body = layout.body().common(new Box(layout.body().x(), layout.body().y(), layout.body().width(),
                layout.lanesHeight() - layout.view().scrollY()));
        pen.line(Palette.GRID, 1, Dash.SOLID);
        layout.axis().hours().forEach(x -> pen.surface().drawLine(x, body.y(), x, body.bottom()));
        pen.line(Palette.QUIET, 1, Dash.DOTTED);
        layout.axis().days().stream().map(DayTab::box).filter(day -> day.x() > body.x())
                .forEach(day -> pen.surface().drawLine(day.x(), body.y(), day.x(), body.bottom()));
    }

    private void day(DayTab tab) {
        Box box = tab.box();
        pen.line(Palette.QUIET, 1, Dash.SOLID);
        pen.surface().drawLine(box.x(), box.y() + 2, box.x(), box.bottom() - 1);
        tab.number().ifPresent(key -> {
            pen.fillRound(key, 5, Palette.PAPER);
            pen.frameRound(key, 5, Palette.QUIET, 1);
            pen.textIn(key, String.valueOf(tab.day().number()), Face.SMALL, Palette.INK);
        });
        pen.text(tab.name(), Palette.INK);
    }

    private void row(Box row, Optional<Label> name, int color, Box whole) {
        pen.line(Palette.GRID, 1, Dash.SOLID);
        pen.surface().drawLine(0, row.y(), whole.right(), row.y());
        pen.text(name, color);
    }

    private void tick(Label label, Box row, boolean utc) {
        pen.text(label, utc ? Palette.INK : Palette.QUIET);
        pen.line(Palette.QUIET, 1, Dash.SOLID);
        int y = utc ? row.y() : row.bottom() - TICK;
        pen.surface().drawLine(label.box().middleX(), y, label.box().middleX(), y + TICK);
    }
}
