package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Envelope;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.scene.DemandSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;

/** Demand as a number and a hatch: twice the demand, twice the lines. */
final class DemandPainter {

    /** Between the lines of a square that everybody needs, pixels along a level. */
    private static final double DENSEST_PX = 6;
    private static final double LEAST_SHARE = 0.12;
    private static final Stroke LINE = Stroke.solid(Palette.DEMAND, 0.9);

    private DemandPainter() {
    }

    static List<Mark> hatches(Tracing tracing, List<DemandSpot> spots) {
        List<Mark> marks = new ArrayList<>();
        List<float[]> lines = new ArrayList<>();
        Envelope box = tracing.sight().box();
        // The hatch is fixed to the ground, so that it does not crawl when the map is moved.
        // Where a square fills the window, fewer lines say the same.
        double wider = Math.max(1, Math.min(4, 250 / tracing.sight().metresPerPx()));
        double phase = tracing.sight().pxX(0) - tracing.sight().pxY(0);
        for (DemandSpot spot : spots) {
            if (spot.outline().box().intersects(box)) {
                lines.addAll(Hatching.falling(tracing.rings(spot.outline().parts()), wider * pitch(spot.share()), phase));
            }
        }
        Pieces.lines(lines, LINE, marks);
        return marks;
    }

    static double pitch(double share) {
        return DENSEST_PX / Math.max(LEAST_SHARE, share);
    }

    /** The numbers, where there is room for them. */
    static List<Mark> numbers(Tracing tracing, List<DemandSpot> spots, Crowd crowd, Lettering lettering) {
        List<Mark> marks = new ArrayList<>();
        for (DemandSpot spot : spots) {
            number(tracing.sight(), spot, crowd, lettering, marks);
        }
        return marks;
    }

    /** In the middle of the square, or a little above or below it; in what is seen of a square that fills the picture. */
    private static void number(Sight sight, DemandSpot spot, Crowd crowd, Lettering lettering, List<Mark> into) {
        String words = number(spot.share());
        double halfWidth = lettering.width(words, Face.STRONG) / 2;
        double halfHeight = lettering.height(Face.STRONG) / 2;
        double room = spot.outline().box().getWidth() / sight.metresPerPx();
        double height = spot.outline().box().getHeight() / sight.metresPerPx();
        if (room < 2 * halfWidth + 6) {
            return;
        }
        Envelope seen = spot.outline().box().intersection(sight.box());
        PlanePoint middle = seen.isNull() || sight.frame().contains(sight.pxX(spot.middle()), sight.pxY(spot.middle()))
                ? spot.middle() : new PlanePoint(seen.centre().x, seen.centre().y);
        for (double part : new double[] {0, 0.15, -0.15}) {
            double x = sight.pxX(middle);
            double y = sight.pxY(middle) + part * Math.min(height, sight.height());
            if (sight.frame().contains(x, y)
                    && crowd.claim(new Frame(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight))) {
                into.add(new Words(words, (float) x, (float) y, Face.STRONG, Palette.DEMAND_WORDS, Palette.PAPER));
                return;
            }
        }
    }

    static String number(double share) {
        return Math.round(100 * share) + " %";
    }
}
