package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.scene.PlaceSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Words;

/** Places along roads, with their ranks where there is room: the better one has it first. */
final class PlacePainter {

    /** More of them on one picture say nothing and take time; the best are drawn. */
    private static final int MOST_DRAWN = 400;
    /** Where there are more, numbers hide what lies under them. */
    private static final int MOST_NUMBERED = 40;
    private static final double HALF_PX = 7;

    private final Tracing tracing;
    private final Crowd crowd;
    private final List<PlaceSpot> seen;

    /** @param places best first */
    PlacePainter(Tracing tracing, List<PlaceSpot> places, Shown shown, Crowd crowd) {
        this.tracing = tracing;
        this.crowd = crowd;
        Frame around = tracing.frame().grown(12);
        seen = !shown.shows(Part.PLACES) ? List.of()
                : places.stream().filter(place -> around.contains(x(place), y(place))).limit(MOST_DRAWN).toList();
    }

    void takeRoom() {
        seen.forEach(place -> crowd.take(new Frame(x(place) - HALF_PX, y(place) - HALF_PX, x(place) + HALF_PX,
                y(place) + HALF_PX)));
    }

    /** The best last, so that it lies on top. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (int i = seen.size() - 1; i >= 0; i--) {
            marks.addAll(Glyphs.place(x(seen.get(i)), y(seen.get(i))));
        }
        return marks;
    }

    List<Mark> ranks(Lettering lettering) {
        List<Mark> marks = new ArrayList<>();
        if (seen.size() <= MOST_NUMBERED) {
            seen.forEach(place -> rank(place, lettering, marks));
        }
        return marks;
    }

    private void rank(PlaceSpot place, Lettering lettering, List<Mark> into) {
        String words = String.valueOf(place.rank());
        double halfWidth = lettering.width(words, Face.SMALL) / 2;
        double halfHeight = lettering.height(Face.SMALL) / 2;
        double beside = HALF_PX + 2 + halfWidth;
        double over = HALF_PX + 1 + halfHeight;
        for (double[] from : new double[][] {{beside, 0}, {-beside, 0}, {0, -over}, {0, over}}) {
            double x = x(place) + from[0];
            double y = y(place) + from[1];
            if (crowd.claim(new Frame(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight))) {
                into.add(new Words(words, (float) x, (float) y, Face.SMALL, Palette.INK, Palette.PAPER));
                return;
            }
        }
    }

    private double x(PlaceSpot place) {
        return tracing.sight().pxX(place.at());
    }

    private double y(PlaceSpot place) {
        return tracing.sight().pxY(place.at());
    }
}
