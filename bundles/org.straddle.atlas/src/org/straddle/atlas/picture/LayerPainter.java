package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.plane.Generalised;
import org.straddle.atlas.plane.Outline;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;

/** The layers of the user, each thing by its role: roads, power lines, buildings and what else there is. */
public final class LayerPainter {

    /** Nearer than this, points have their names beside them, metres to the pixel. */
    private static final double NAMES_FROM = 60;

    private final Tracing tracing;
    private final IProgressMonitor monitor;
    private final List<Mark> marks = new ArrayList<>();

    private LayerPainter(Tracing tracing, IProgressMonitor monitor) {
        this.tracing = tracing;
        this.monitor = monitor;
    }

    /** How a role is drawn; also for a legend. */
    public static Stroke stroke(String role) {
        return switch (role) {
            case "road" -> Stroke.solid(Palette.ROAD, 1.6);
            case "power-line" -> new Stroke(Palette.POWER_LINE, 1.5, Stroke.Dash.LONG_SHORT);
            case "building" -> Stroke.solid(Palette.BUILDING, 1);
            case "railway" -> new Stroke(Palette.RAILWAY, 2.2, Stroke.Dash.DASHED);
            case "quarry" -> new Stroke(Palette.QUARRY, 1.4, Stroke.Dash.DOTTED);
            default -> Stroke.solid(Palette.OTHER, 1.3);
        };
    }

    static List<Mark> paint(Tracing tracing, List<UserLayer.Laid> layers, Shown shown, Crowd crowd, Lettering lettering,
            IProgressMonitor monitor) {
        LayerPainter painter = new LayerPainter(tracing, monitor);
        for (UserLayer.Laid layer : layers) {
            if (shown.showsLayer(layer.layer().name())) {
                layer.byRole().forEach(painter::areas);
            }
        }
        for (UserLayer.Laid layer : layers) {
            if (shown.showsLayer(layer.layer().name())) {
                layer.byRole().forEach(painter::lines);
                painter.points(layer.byRole(), crowd, lettering);
            }
        }
        return painter.marks;
    }

    private void areas(String role, Generalised things) {
        List<Outline> areas = in(things, Outline.Kind.AREA);
        Stroke stroke = stroke(role);
        Pieces.areas(areas.stream().map(area -> tracing.rings(area.parts())).toList(), stroke.rgb(), 0.16, marks);
        Pieces.lines(tracing.lines(areas), Stroke.solid(stroke.rgb(), 1), marks);
    }

    private void lines(String role, Generalised things) {
        Pieces.lines(tracing.lines(in(things, Outline.Kind.LINES)), stroke(role), marks);
    }

    private void points(Map<String, Generalised> byRole, Crowd crowd, Lettering lettering) {
        byRole.forEach((role, things) -> {
            List<List<float[]>> dots = new ArrayList<>();
            for (Outline points : in(things, Outline.Kind.POINTS)) {
                for (double[] point : points.parts()) {
                    double x = tracing.sight().pxX(point[0]);
                    double y = tracing.sight().pxY(point[1]);
                    if (tracing.frame().contains(x, y)) {
                        dots.add(List.of(Glyphs.round(x, y, 2.4)));
                        name(points.name(), x, y, crowd, lettering);
                    }
                }
            }
            Pieces.areas(dots, stroke(role).rgb(), 1, marks);
        });
    }

    private void name(String name, double x, double y, Crowd crowd, Lettering lettering) {
        if (name.isEmpty() || tracing.sight().metresPerPx() > NAMES_FROM) {
            return;
        }
        double width = lettering.width(name, Face.SMALL);
        double height = lettering.height(Face.SMALL);
        if (crowd.claim(new Frame(x + 5, y - height / 2, x + 5 + width, y + height / 2))) {
            marks.add(new Words(name, (float) (x + 5 + width / 2), (float) y, Face.SMALL, Palette.QUIET, -1));
        }
    }

    private List<Outline> in(Generalised things, Outline.Kind kind) {
        return things.in(tracing.sight().box(), tracing.sight().metresPerPx(), monitor).stream()
                .filter(outline -> outline.kind() == kind).toList();
    }
}
