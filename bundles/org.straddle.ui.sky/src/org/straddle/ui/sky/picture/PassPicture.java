package org.straddle.ui.sky.picture;

import java.time.Instant;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
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
    public static Rectangle paint(GC gc, Faces faces, PassSheet sheet, Rectangle area, Instant pointer) {
        Brush brush = new Brush(gc, faces);
        brush.fill(area, Palette.PAPER);
        boolean low = area.height < 0.55 * area.width;
        int dialWidth = low ? Math.max(190, Math.min(300, area.width / 4)) : area.width;
        int dialHeight = low ? area.height : Math.max(150, area.height * 3 / 10);
        Rectangle horizon = low ? new Rectangle(area.x, area.y, area.width - dialWidth, area.height)
                : new Rectangle(area.x, area.y, area.width, area.height - dialHeight);
        Rectangle dial = low ? new Rectangle(area.x + area.width - dialWidth, area.y, dialWidth, area.height)
                : new Rectangle(area.x, area.y + area.height - dialHeight, area.width, dialHeight);
        boolean both = DialPainter.fits(brush, sheet, dial) && HorizonPainter.fits(brush, sheet, horizon);
        if (both) {
            DialPainter.paint(brush, sheet, dial, pointer);
        }
        HorizonFrame frame = both ? HorizonPainter.paint(brush, sheet, horizon, pointer)
                : HorizonPainter.fits(brush, sheet, area) ? HorizonPainter.paint(brush, sheet, area, pointer)
                : HorizonPainter.glance(brush, sheet, area, pointer);
        return new Rectangle(frame.left(), frame.top(), frame.width(), frame.height());
    }

    /** The instant of the arc that is nearest to a point of the horizon, for pointing with the mouse. */
    public static Instant nearest(PassSheet sheet, Rectangle horizon, int x, int y) {
        HorizonFrame frame = HorizonFrame.of(sheet, horizon.x, horizon.y, horizon.width, horizon.height);
        return sheet.arc().points().min((a, b) -> Double.compare(
                Math.hypot(frame.x(a.azimuthDeg()) - x, frame.y(a.elevationDeg()) - y),
                Math.hypot(frame.x(b.azimuthDeg()) - x, frame.y(b.elevationDeg()) - y))).orElseThrow().at();
    }
}
