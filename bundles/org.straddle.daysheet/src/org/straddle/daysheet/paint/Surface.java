package org.straddle.daysheet.paint;

import java.util.ArrayList;
import java.util.List;

import org.straddle.daysheet.layout.Box;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Paper;
import org.straddle.drawing.Pen;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.drawing.Words;

/**
 * Whole pixels from the top left corner, as the sheet is laid out, drawn with any pen: on a screen, a picture or a page.
 * Lines of an odd width run through the middle of pixels, so that they are sharp.
 */
public final class Surface {

    /** Pieces of a quarter of a circle. */
    private static final int QUARTER = 6;

    private final Pen pen;
    private final Lettering letters;
    private double opacity = 1;
    private int background = Paper.WHITE;
    private Stroke line = Stroke.solid(Paper.INK, 1);

    public Surface(Pen pen, Lettering letters) {
        this.pen = pen;
        this.letters = letters;
    }

    /** Of all that follows, 0 to 255. */
    void setAlpha(int alpha) {
        opacity = alpha / 255.0;
    }

    /** For what is filled. */
    void setBackground(int rgb) {
        background = rgb;
    }

    /** For lines. */
    void setLine(int rgb, int width, Dash dash) {
        line = new Stroke(rgb, width, dash);
    }

    void drawLine(int x1, int y1, int x2, int y2) {
        drawLines(List.of(new int[] {x1, y1, x2, y2}));
    }

    /** @param lines x and y in turn; all at once, which is faster than one by one */
    void drawLines(List<int[]> lines) {
        float middle = middle();
        List<float[]> moved = new ArrayList<>(lines.size());
        for (int[] points : lines) {
            float[] way = new float[points.length];
            for (int i = 0; i < points.length; i++) {
                way[i] = points[i] + middle;
            }
            moved.add(way);
        }
        stroke(moved);
    }

    /** @param points x and y in turn */
    void drawPolyline(int[] points) {
        drawLines(List.of(points));
    }

    void drawPolygon(int[] points) {
        int[] closed = java.util.Arrays.copyOf(points, points.length + 2);
        closed[points.length] = points[0];
        closed[points.length + 1] = points[1];
        drawLines(List.of(closed));
    }

    void fillPolygon(int[] points) {
        float[] ring = new float[points.length];
        for (int i = 0; i < points.length; i++) {
            ring[i] = points[i];
        }
        fill(ring);
    }

    void drawRectangle(int x, int y, int width, int height) {
        drawPolygon(new int[] {x, y, x + width, y, x + width, y + height, x, y + height});
    }

    void fillRectangle(int x, int y, int width, int height) {
        fillPolygon(new int[] {x, y, x + width, y, x + width, y + height, x, y + height});
    }

    /** All of one size. */
    void fillSquares(List<int[]> corners, int side) {
        pen.fill(corners.stream().map(at -> new float[] {at[0], at[1], at[0] + side, at[1], at[0] + side, at[1] + side,
                at[0], at[1] + side}).toList(), background, opacity);
    }

    void drawRoundRectangle(int x, int y, int width, int height, int arc) {
        float middle = middle();
        stroke(List.of(round(x + middle, y + middle, width, height, arc / 2f)));
    }

    void fillRoundRectangle(int x, int y, int width, int height, int arc) {
        fill(round(x, y, width, height, arc / 2f));
    }

    void fillOval(int x, int y, int width, int height) {
        fill(round(x, y, width, height, Math.max(width, height) / 2f));
    }

    /** From the top left corner of the words. */
    void drawText(String text, Face face, int rgb, int x, int y) {
        if (!text.isEmpty()) {
            pen.write(new Words(text, (float) (x + letters.width(text, face) / 2), (float) (y + letters.height(face) / 2),
                    face, rgb, -1));
        }
    }

    Box clip() {
        Frame clip = pen.clip();
        int left = (int) Math.floor(clip.left());
        int top = (int) Math.floor(clip.top());
        return new Box(left, top, (int) Math.ceil(clip.right()) - left, (int) Math.ceil(clip.bottom()) - top);
    }

    void within(Box box, Runnable drawing) {
        pen.within(new Frame(box.x(), box.y(), box.right(), box.bottom()), drawing);
    }

    private float middle() {
        return line.widthPx() % 2 == 1 ? 0.5f : 0;
    }

    private void fill(float[] ring) {
        pen.fill(List.of(ring), background, opacity);
    }

    /** Lines know no opacity, and what is seen through lies on paper. */
    private void stroke(List<float[]> lines) {
        pen.stroke(lines, opacity == 1 ? line
                : new Stroke(Paper.tint(line.rgb(), opacity), line.widthPx(), line.dash()));
    }

    /** Closed, clockwise from the end of the upper left corner. */
    private static float[] round(float x, float y, float width, float height, float radius) {
        double rx = Math.min(radius, width / 2);
        double ry = Math.min(radius, height / 2);
        double[][] middles = {{x + width - rx, y + ry}, {x + width - rx, y + height - ry}, {x + rx, y + height - ry},
            {x + rx, y + ry}};
        float[] ring = new float[2 * (4 * (QUARTER + 1) + 1)];
        int at = 0;
        for (int corner = 0; corner < 4; corner++) {
            for (int i = 0; i <= QUARTER; i++) {
                double turn = Math.PI / 2 * (corner - 1 + (double) i / QUARTER);
                ring[at++] = (float) (middles[corner][0] + rx * Math.cos(turn));
                ring[at++] = (float) (middles[corner][1] + ry * Math.sin(turn));
            }
        }
        ring[at++] = ring[0];
        ring[at] = ring[1];
        return ring;
    }
}
