package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.plane.Plane;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.grid.GeoPosition;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** How long things on the ground are and where north is, both true for the middle of the window. */
public final class ScaleBar {

    private static final Catalogue TEXTS = Catalogue.of(ScaleBar.class);

    private static final double ABOUT_PX = 120;
    private static final double HEIGHT_PX = 34;

    private ScaleBar() {
    }

    /** A bar of a round length and an arrow to the north, with the lower left corner at a point. */
    public static List<Mark> of(Sight sight, Plane plane, Lettering lettering, double left, double bottom) {
        GeoPosition middle = plane.position(sight.centreX(), sight.centreY());
        double groundPerPx = sight.metresPerPx() / plane.scaleAt(middle);
        double metres = round(ABOUT_PX * groundPerPx);
        double length = metres / groundPerPx;
        String words = metres >= 1000 ? TEXTS.text("scale.km", "kilometres", Math.round(metres / 1000))
                : metres >= 1 ? TEXTS.text("scale.metres", "metres", Math.round(metres))
                        : TEXTS.text("scale.cm", "centimetres", Math.round(metres * 100));
        double top = bottom - HEIGHT_PX;
        double right = left + length + 46;
        double y = bottom - 9;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Fill(List.of(new Frame(left, top, right, bottom).ring()), Palette.PAPER, 0.85));
        marks.add(new Mark.Line(List.of(Glyphs.line(left + 8, y - 5, left + 8, y, left + 8 + length, y, left + 8 + length,
                y - 5)), Stroke.solid(Palette.INK, 1.6)));
        marks.add(new Words(words, (float) (left + 8 + length / 2), (float) (y - 2 - lettering.height(Face.SMALL) / 2),
                Face.SMALL, Palette.INK, -1));
        north(right - 17, (top + bottom) / 2, plane.northDeg(middle), marks);
        return marks;
    }

    private static void north(double x, double y, double northDeg, List<Mark> into) {
        double turn = Math.toRadians(northDeg);
        double sin = Math.sin(turn);
        double cos = Math.cos(turn);
        double[][] needle = {{0, -13}, {5, 8}, {0, 4}, {-5, 8}};
        double[] corners = new double[8];
        for (int i = 0; i < 4; i++) {
            corners[2 * i] = x + needle[i][0] * cos - needle[i][1] * sin;
            corners[2 * i + 1] = y + needle[i][0] * sin + needle[i][1] * cos;
        }
        into.add(new Mark.Fill(List.of(Glyphs.ring(corners)), Palette.INK, 1));
        into.add(new Words(TEXTS.text("scale.north"), (float) (x + 11 * sin + 9 * cos), (float) (y - 9 * cos + 9 * sin), Face.SMALL, Palette.INK, -1));
    }

    /** 1, 2 or 5 times a power of ten, not above the length. */
    static double round(double metres) {
        double power = Math.pow(10, Math.floor(Math.log10(metres)));
        double head = metres / power;
        return power * (head >= 5 ? 5 : head >= 2 ? 2 : 1);
    }

    /** {@code 1 px = 120 m}: for those who cannot see the bar. */
    public static String words(Sight sight, Plane plane) {
        double groundPerPx = sight.metresPerPx() / plane.scaleAt(plane.position(sight.centreX(), sight.centreY()));
        return TEXTS.text("scale.across", "distance", FigureText.inCurrent().distance(sight.width() * groundPerPx));
    }
}
