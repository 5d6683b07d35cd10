package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.impl.PackedCoordinateSequence;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.scene.RegionShape;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.words.Catalogue;

/** Regions where chasers live: a dotted line around each, and its name with its share of them where there is room. */
final class RegionPainter {

    private static final Catalogue TEXTS = Catalogue.of(RegionPainter.class);

    static final Stroke LINE = new Stroke(Palette.REGION, 2.5, Stroke.Dash.DOTTED);

    private final Tracing tracing;
    private final List<RegionShape> seen;

    RegionPainter(Tracing tracing, List<RegionShape> regions, Shown shown) {
        this.tracing = tracing;
        Envelope box = tracing.sight().box();
        seen = !shown.shows(Part.REGIONS) ? List.of()
                : regions.stream().filter(region -> region.outline().box().intersects(box)).toList();
    }

    List<Mark> lines() {
        List<Mark> marks = new ArrayList<>();
        Pieces.lines(tracing.lines(seen.stream().map(RegionShape::outline).toList()), LINE, marks);
        return marks;
    }

    /** Well within each, or else in the middle of what is seen of it. */
    List<Mark> names(Crowd crowd, Lettering lettering) {
        List<Mark> marks = new ArrayList<>();
        for (RegionShape region : seen) {
            String words = TEXTS.text("region.chasers", "region", region.outline().name(),
                    "share", Math.round(100 * region.share()));
            double halfWidth = lettering.width(words, Face.PLAIN) / 2;
            double halfHeight = lettering.height(Face.PLAIN) / 2;
            Envelope part = region.outline().box().intersection(tracing.sight().box());
            Coordinate inside = new Coordinate(region.inside().x(), region.inside().y());
            for (Coordinate middle : List.of(inside, part.centre())) {
                double x = tracing.sight().pxX(middle.x);
                double y = tracing.sight().pxY(middle.y);
                if (part.getWidth() / tracing.sight().metresPerPx() >= halfWidth && part.contains(middle)
                        && surrounds(region.outline(), middle)
                        && crowd.claim(new Frame(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight))) {
                    marks.add(new Words(words, (float) x, (float) y, Face.PLAIN, Palette.REGION, Palette.PAPER));
                    break;
                }
            }
        }
        return marks;
    }

    /** Whether an odd number of rings does. */
    private static boolean surrounds(Outline area, Coordinate place) {
        return area.parts().stream().filter(ring -> PointLocation.isInRing(place,
                new PackedCoordinateSequence.Double(ring, 2, 0).toCoordinateArray())).count() % 2 == 1;
    }
}
