package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Envelope;
import org.straddle.atlas.layer.GridLevel;
import org.straddle.atlas.layer.LaidGrid;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.grid.Locator;

/** Fields, squares and subsquares with their names, each as soon as there is room for it. */
final class GridPainter {

    private static final double DEGREE_M = 111_200;
    private static final double LEAST_SQUARE_PX = 9;
    private static final double LEAST_SUBSQUARE_PX = 18;
    /** A name that has moved into sight stays this far from the edge. */
    private static final double INSET_PX = 16;
    /** The name of a cell this high is moved into sight when its place is out of it. */
    private static final double LARGE_PX = 200;
    /** Where a name may stand, from the middle of its cell, as parts of the cell's width and height. */
    private static final double[][] MIDDLE = {{0, 0}};
    private static final double[][] PARTS_OF_SQUARE = {{0, -0.32}, {0, 0.32}, {-0.25, -0.32}, {0.25, -0.32}, {-0.25, 0.32},
        {0.25, 0.32}, {0, 0}};

    private final Tracing tracing;
    private final LaidGrid grid;
    private final Plane plane;
    private final Shown shown;
    private final double degreePx;

    GridPainter(Tracing tracing, MapContents contents, Shown shown) {
        this.tracing = tracing;
        this.grid = contents.grid();
        this.plane = contents.projector().plane();
        this.shown = shown;
        this.degreePx = DEGREE_M / tracing.sight().metresPerPx();
    }

    private boolean squares() {
        return shown.shows(Part.SQUARES) && degreePx >= LEAST_SQUARE_PX;
    }

    private boolean subsquares() {
        return shown.shows(Part.SUBSQUARES) && degreePx / 24 >= LEAST_SUBSQUARE_PX;
    }

    /** Fine lines first, so that the lines of fields lie over them. */
    List<Mark> lines() {
        List<Mark> marks = new ArrayList<>();
        if (subsquares()) {
            lines(GridLevel.SUBSQUARE, Stroke.solid(Palette.SUBSQUARE, 1), marks);
        }
        if (squares()) {
            lines(GridLevel.SQUARE, Stroke.solid(Palette.SQUARE, degreePx > 60 ? 1.4 : 0.8), marks);
        }
        if (shown.shows(Part.FIELDS)) {
            lines(GridLevel.FIELD, Stroke.solid(Palette.FIELD, 1.8), marks);
        }
        return marks;
    }

    private void lines(GridLevel level, Stroke stroke, List<Mark> into) {
        List<float[]> lines = new ArrayList<>();
        grid.in(tracing.sight().box(), level).forEach(tile -> lines.addAll(tracing.lines(tile.lines())));
        Pieces.lines(lines, stroke, into);
    }

    /** Names, coarse ones first: where squares have theirs, fields need none. */
    List<Mark> names(Crowd crowd, Lettering lettering) {
        List<Mark> marks = new ArrayList<>();
        if (squares() && degreePx >= 30) {
            names(GridLevel.SQUARE, degreePx > 260 ? Face.LARGE : Face.PLAIN, Palette.FIELD, crowd, lettering, marks);
        }
        if (shown.shows(Part.FIELDS) && degreePx < 60) {
            names(GridLevel.FIELD, Face.LARGE, Palette.FIELD, crowd, lettering, marks);
        }
        if (subsquares() && degreePx / 24 >= 22) {
            names(GridLevel.SUBSQUARE, Face.SMALL, Palette.QUIET, crowd, lettering, marks);
        }
        return marks;
    }

    private void names(GridLevel level, Face face, int rgb, Crowd crowd, Lettering lettering, List<Mark> into) {
        Envelope box = tracing.sight().box();
        double height = lettering.height(face);
        for (LaidGrid.Tile tile : grid.in(box, level)) {
            for (LaidGrid.Cell cell : tile.cells()) {
                if (cell.box().intersects(box)) {
                    double width = lettering.width(cell.locator(), face);
                    if (cell.box().getWidth() / tracing.sight().metresPerPx() >= width + 6) {
                        name(level, cell, face, rgb, width, height, crowd, into);
                    }
                }
            }
        }
    }

    /** A square's name stands above its middle, which a number of demand has, or where else in it there is room. */
    private void name(GridLevel level, LaidGrid.Cell cell, Face face, int rgb, double width, double height, Crowd crowd,
            List<Mark> into) {
        Sight sight = tracing.sight();
        double cellWidth = cell.box().getWidth() / sight.metresPerPx();
        double cellHeight = cell.box().getHeight() / sight.metresPerPx();
        for (double[] part : level == GridLevel.SQUARE ? PARTS_OF_SQUARE : MIDDLE) {
            double x = sight.pxX(cell.middle()) + part[0] * cellWidth;
            double y = sight.pxY(cell.middle()) + part[1] * cellHeight;
            Frame window = sight.frame().grown(-INSET_PX);
            if (cellHeight > LARGE_PX && !window.contains(x, y)) {
                x = Math.max(window.left() + width / 2, Math.min(window.right() - width / 2, x));
                y = Math.max(window.top() + height / 2, Math.min(window.bottom() - height / 2, y));
            }
            if (isIn(cell, x, y)
                    && crowd.claim(new Frame(x - width / 2 - 2, y - height / 2, x + width / 2 + 2, y + height / 2))) {
                into.add(new Words(cell.locator(), (float) x, (float) y, face, rgb,
                        level == GridLevel.SQUARE ? Palette.PAPER : -1));
                return;
            }
        }
    }

    private boolean isIn(LaidGrid.Cell cell, double x, double y) {
        PlanePoint point = tracing.sight().at(x, y);
        return Math.hypot(point.x(), point.y()) < plane.rimM()
                && Locator.of(plane.position(point.x(), point.y()), cell.locator().length()).text().equals(cell.locator());
    }
}
