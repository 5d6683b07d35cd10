package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.atlas.layer.LaidBaseMap;
import org.straddle.atlas.plane.Generalised;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.Projector;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;

/** Sea, land, coasts and borders. */
final class GroundPainter {

    private GroundPainter() {
    }

    static List<Mark> paint(Tracing tracing, Projector projector, Optional<LaidBaseMap> baseMap, IProgressMonitor monitor) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Fill(List.of(tracing.frame().ring()), Palette.OFF_MAP, 1));
        List<float[]> rim = tracing.rings(projector.wholeMap().parts());
        marks.add(new Mark.Fill(rim, Palette.SEA, 1));
        baseMap.ifPresent(map -> {
            List<Outline> land = in(map.land(), tracing, monitor);
            // Holes are rings of their own here, so all land is one filling.
            marks.add(new Mark.Fill(land.stream().flatMap(ring -> tracing.rings(ring.parts()).stream()).toList(),
                    Palette.LAND, 1));
            Pieces.lines(tracing.lines(land), Stroke.solid(Palette.COAST, 1), marks);
            Pieces.lines(tracing.lines(in(map.states(), tracing, monitor)),
                    new Stroke(Palette.STATE, 1, Stroke.Dash.DOTTED), marks);
            Pieces.lines(tracing.lines(in(map.borders(), tracing, monitor)),
                    new Stroke(Palette.BORDER, 1.2, Stroke.Dash.LONG_SHORT), marks);
        });
        Pieces.lines(tracing.lines(projector.wholeMap().parts()), Stroke.solid(Palette.FIELD, 1), marks);
        return marks;
    }

    private static List<Outline> in(Generalised outlines, Tracing tracing, IProgressMonitor monitor) {
        return outlines.in(tracing.sight().box(), tracing.sight().metresPerPx(), monitor);
    }
}
