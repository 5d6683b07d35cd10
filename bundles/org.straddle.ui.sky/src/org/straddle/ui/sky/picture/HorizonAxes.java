package org.straddle.ui.sky.picture;

import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke.Dash;
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
            brush.pen(Palette.GRID, 1, Dash.SOLID);
            brush.line(frame.left(), y, frame.right(), y);
            String words = elevation + "°";
            Size size = brush.size(words, Face.SMALL);
            brush.words(words, frame.left() - size.width() - 4,
                    Math.max(frame.top() - 4, Math.min(y - size.height() / 2, frame.bottom() - size.height())),
                    Face.SMALL, Palette.QUIET);
        }
    }

    void azimuths() {
        brush.pen(Palette.QUIET, 1, Dash.SOLID);
        brush.outline(new Box(frame.left(), frame.top(), frame.width(), frame.height()));
        int step = frame.width() > 520 ? 45 : 90;
        for (int azimuth = (int) Math.ceil(frame.leftDeg() / 15) * 15; azimuth <= frame.leftDeg() + frame.spanDeg();
                azimuth += 15) {
            int x = frame.x(azimuth);
            boolean named = Math.floorMod(azimuth, step) == 0;
            brush.pen(Palette.QUIET, 1, Dash.SOLID);
            brush.line(x, frame.bottom(), x, frame.bottom() + (named ? 6 : 3));
            if (named) {
                String words = Compass.words(azimuth);
                Size size = brush.size(words, Face.SMALL);
                int within = Math.max(frame.left() - size.width() / 4, Math.min(x - size.width() / 2, frame.right() + 10 - size.width()));
                brush.words(words, within, frame.bottom() + 6, Face.SMALL,
                        Math.floorMod(azimuth, 90) == 0 ? Palette.INK : Palette.QUIET);
            }
        }
    }
}
