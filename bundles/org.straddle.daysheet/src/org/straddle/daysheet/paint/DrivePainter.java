package org.straddle.daysheet.paint;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DriveBox;
import org.straddle.daysheet.sheet.Hatch;
import org.straddle.drawing.Stroke.Dash;

/** Draws a drive: a hatched road with an arrow; one that does not fit is crossed and ends in a barrier. */
final class DrivePainter {

    private static final int ROAD = 8;
    private static final int ARROW = 6;

    private final Brush pen;

    DrivePainter(Brush pen) {
        this.pen = pen;
    }

    void paint(DriveBox drive) {
        road(drive.box(), drive.drive().fits());
        drive.label().ifPresent(label -> {
            Box words = label.box();
            if (words.overlaps(drive.box())) {
                pen.fillRound(new Box(words.x() - 4, words.y() - 1, words.width() + 8, words.height() + 2), 6,
                        Palette.PAPER);
            }
            pen.text(label, Palette.INK);
        });
    }

    void road(Box box, boolean fits) {
        int color = fits ? Palette.QUIET : Palette.TROUBLE;
        int tip = Math.min(ARROW, box.width());
        Box road = new Box(box.x(), box.middleY() - ROAD / 2, box.width() - tip, ROAD);
        pen.fill(road, Palette.PAPER);
        pen.hatch(road, fits ? Hatch.RISING : Hatch.CROSSED, color, 5);
        pen.line(color, 1, Dash.SOLID);
        pen.surface().drawLine(road.x(), road.y(), road.right(), road.y());
        pen.surface().drawLine(road.x(), road.bottom(), road.right(), road.bottom());
        pen.surface().setBackground(color);
        if (fits) {
            pen.surface().fillPolygon(new int[] {road.right(), road.y() - 2, box.right(), box.middleY(), road.right(),
                    road.bottom() + 2});
        } else {
            pen.fill(new Box(box.right() - 3, box.y() + 1, 3, box.height() - 2), color);
        }
    }
}
