package org.straddle.ui.sky.picture;

import java.util.List;
import java.util.function.ToDoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Lines, marks and words on a GC. */
final class Brush {

    static final int[] DASHED = {9, 5};
    static final int[] DOTTED = {2, 4};

    private final GC gc;
    private final Faces faces;

    Brush(GC gc, Faces faces) {
        this.gc = gc;
        this.faces = faces;
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
    }

    GC gc() {
        return gc;
    }

    Faces faces() {
        return faces;
    }

    void fill(Rectangle box, Color color) {
        gc.setBackground(color);
        gc.fillRectangle(box);
    }

    /** @param dashes null for a solid line */
    void pen(Color color, int width, int[] dashes) {
        gc.setForeground(color);
        gc.setLineWidth(width);
        gc.setLineCap(SWT.CAP_FLAT);
        gc.setLineJoin(SWT.JOIN_ROUND);
        if (dashes == null) {
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            gc.setLineDash(dashes);
        }
    }

    void line(int x1, int y1, int x2, int y2) {
        gc.drawLine(x1, y1, x2, y2);
    }

    /** A line through points, none of them moved to whole pixels. */
    <P> void curve(List<P> points, ToDoubleFunction<P> x, ToDoubleFunction<P> y) {
        Path path = new Path(gc.getDevice());
        for (int i = 0; i < points.size(); i++) {
            float atX = (float) x.applyAsDouble(points.get(i));
            float atY = (float) y.applyAsDouble(points.get(i));
            if (i == 0) {
                path.moveTo(atX, atY);
            } else {
                path.lineTo(atX, atY);
            }
        }
        gc.drawPath(path);
        path.dispose();
    }

    Point size(String words, Font face) {
        gc.setFont(face);
        return gc.textExtent(words, SWT.DRAW_DELIMITER);
    }

    void words(String words, int x, int y, Font face, Color color) {
        gc.setFont(face);
        gc.setForeground(color);
        gc.drawText(words, x, y, SWT.DRAW_TRANSPARENT | SWT.DRAW_DELIMITER);
    }

    /** Words on a slip of paper, so that lines below do not disturb them. */
    void slip(String words, Rectangle place, Font face, Color color) {
        gc.setAlpha(205);
        fill(place, Palette.PAPER);
        gc.setAlpha(255);
        words(words, place.x, place.y, face, color);
    }

    void disc(int x, int y, int radius, Color fill, Color edge) {
        gc.setBackground(fill);
        gc.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
        pen(edge, 1, null);
        gc.drawOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** A triangle that points up at AOS and down at LOS, a square on its corner at TCA. */
    void mark(String moment, int x, int y) {
        int[] outline = switch (moment) {
            case "AOS" -> new int[] {x - 6, y + 5, x + 6, y + 5, x, y - 6};
            case "LOS" -> new int[] {x - 6, y - 5, x + 6, y - 5, x, y + 6};
            default -> new int[] {x - 6, y, x, y - 6, x + 6, y, x, y + 6};
        };
        gc.setBackground(Palette.PAPER);
        gc.fillPolygon(outline);
        pen(Palette.INK, 2, null);
        gc.drawPolygon(outline);
    }

    /** A thin line to words that stand away from what they name. */
    void leader(int x, int y, Rectangle place) {
        int toX = Math.max(place.x, Math.min(x, place.x + place.width));
        int toY = Math.max(place.y, Math.min(y, place.y + place.height));
        if (Math.hypot(toX - x, toY - y) > 14) {
            pen(Palette.QUIET, 1, null);
            line(x, y, toX, toY);
        }
    }

    /** Halfway between two points, from the first to the second. */
    void arrowHead(int fromX, int fromY, int toX, int toY) {
        double length = Math.hypot(toX - fromX, toY - fromY);
        if (length > 0) {
            double ux = (toX - fromX) / length;
            double uy = (toY - fromY) / length;
            double x = (fromX + toX) / 2.0;
            double y = (fromY + toY) / 2.0;
            gc.setBackground(Palette.INK);
            gc.fillPolygon(new int[] {(int) Math.round(x + 8 * ux), (int) Math.round(y + 8 * uy),
                (int) Math.round(x - 5 * ux - 6 * uy), (int) Math.round(y - 5 * uy + 6 * ux),
                (int) Math.round(x - 5 * ux + 6 * uy), (int) Math.round(y - 5 * uy - 6 * ux)});
        }
    }

    void sun(int x, int y) {
        pen(Palette.INK, 1, null);
        for (int i = 0; i < 8; i++) {
            double turn = Math.PI * i / 4;
            line(x + (int) Math.round(10 * Math.cos(turn)), y + (int) Math.round(10 * Math.sin(turn)),
                    x + (int) Math.round(14 * Math.cos(turn)), y + (int) Math.round(14 * Math.sin(turn)));
        }
        disc(x, y, 7, Palette.SUN, Palette.INK);
    }
}
