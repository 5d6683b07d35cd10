package org.straddle.ui.sky.picture;

import org.eclipse.swt.graphics.Point;
import org.straddle.ui.sky.pass.Compass;

/** The scales of the horizon: elevation at the left, azimuth with winds below. */
final class HorizonAxes {

    private final Brush brush;
    private final HorizonFrame frame;

    HorizonAxes(Brush brush, HorizonFrame frame) {
        this.brush = brush;
        this.frame = frame;
    }

    void elevations() {
        int step = frame.topDeg() > 50 && frame.height() < 220 ? 30 : frame.topDeg() > 50 ? 15 : 10;
        for (int elevation = (int) Math.ceil(frame.bottomDeg() / step) * step; elevation <= frame.topDeg();
                elevation += step) {
            int y = frame.y(elevation);
            brush.pen(Palette.GRID, 1, null);
            brush.line(frame.left(), y, frame.right(), y);
            String words = elevation + "°";
            Point size = brush.size(words, brush.faces().small());
            brush.words(words, frame.left() - size.x - 4,
                    Math.max(frame.top() - 4, Math.min(y - size.y / 2, frame.bottom() - size.y)),
                    brush.faces().small(), Palette.QUIET);
        }
    }

    void azimuths() {
        brush.pen(Palette.QUIET, 1, null);
        brush.gc().drawRectangle(frame.left(), frame.top(), frame.width(), frame.height());
        int step = frame.width() > 520 ? 45 : 90;
        for (int azimuth = (int) Math.ceil(frame.leftDeg() / 15) * 15; azimuth <= frame.leftDeg() + frame.spanDeg();
                azimuth += 15) {
            int x = frame.x(azimuth);
            boolean named = Math.floorMod(azimuth, step) == 0;
            brush.pen(Palette.QUIET, 1, null);
            brush.line(x, frame.bottom(), x, frame.bottom() + (named ? 6 : 3));
            if (named) {
                String words = Compass.words(azimuth);
                Point size = brush.size(words, brush.faces().small());
                int within = Math.max(frame.left() - size.x / 4, Math.min(x - size.x / 2, frame.right() + 10 - size.x));
                brush.words(words, within, frame.bottom() + 6, brush.faces().small(),
                        Math.floorMod(azimuth, 90) == 0 ? Palette.INK : Palette.QUIET);
            }
        }
    }
}
