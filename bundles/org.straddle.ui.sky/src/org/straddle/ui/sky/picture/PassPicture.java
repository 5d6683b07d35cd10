package org.straddle.ui.sky.picture;

import java.time.Instant;

import org.straddle.drawing.Lettering;
import org.straddle.drawing.Pen;
import org.straddle.ui.sky.pass.PassSheet;

/**
 * The horizon and the dial, side by side on a low sheet, one above the other on a high one. Where there is no room for
 * both, the horizon has it all; where there is hardly any, the bare arc is drawn with a line of words.
 */
public final class PassPicture {

    private PassPicture() {
    }

    /**
     * @param pointer where the reader points; null for nowhere
     * @return where the horizon lies, left and right edge and height, for pointing
     */
    public static Box paint(Pen pen, Lettering letters, PassSheet sheet, Box area, Instant pointer) {
        Brush brush = new Brush(pen, letters);
        brush.fill(area, Palette.PAPER);
        boolean low = area.height() < 0.55 * area.width();
        int dialWidth = low ? Math.max(190, Math.min(300, area.width() / 4)) : area.width();
        int dialHeight = low ? area.height() : Math.max(150, area.height() * 3 / 10);
        Box horizon = low ? new Box(area.x(), area.y(), area.width() - dialWidth, area.height())
                : new Box(area.x(), area.y(), area.width(), area.height() - dialHeight);
        Box dial = low ? new Box(area.x() + area.width() - dialWidth, area.y(), dialWidth, area.height())
                : new Box(area.x(), area.y() + area.height() - dialHeight, area.width(), dialHeight);
        boolean both = DialPainter.fits(brush, sheet, dial) && HorizonPainter.fits(brush, sheet, horizon);
        if (both) {
            DialPainter.paint(brush, sheet, dial, pointer);
        }
        HorizonFrame frame = both ? HorizonPainter.paint(brush, sheet, horizon, pointer)
                : HorizonPainter.fits(brush, sheet, area) ? HorizonPainter.paint(brush, sheet, area, pointer)
                : HorizonPainter.glance(brush, sheet, area, pointer);
        return new Box(frame.left(), frame.top(), frame.width(), frame.height());
    }

    /** The instant of the arc that is nearest to a point of the horizon, for pointing with the mouse. */
    public static Instant nearest(PassSheet sheet, Box horizon, int x, int y) {
        HorizonFrame frame = HorizonFrame.of(sheet, horizon.x(), horizon.y(), horizon.width(), horizon.height());
        return sheet.arc().points().min((a, b) -> Double.compare(
                Math.hypot(frame.x(a.azimuthDeg()) - x, frame.y(a.elevationDeg()) - y),
                Math.hypot(frame.x(b.azimuthDeg()) - x, frame.y(b.elevationDeg()) - y))).orElseThrow().at();
    }
}
