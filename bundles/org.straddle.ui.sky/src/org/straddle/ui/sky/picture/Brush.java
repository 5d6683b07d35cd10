package org.straddle.ui.sky.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Pen;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.drawing.Words;

/** Lines, marks and words, with a pen. */
final class Brush {

    private static final double SLIP_OPACITY = 0.8;
    private static final int CORNERS_OF_A_DISC = 24;

    private final Pen pen;
    private final Lettering letters;
    private Stroke stroke = Stroke.solid(Palette.INK, 1);

    Brush(Pen pen, Lettering letters) {
        this.pen = pen;
        this.letters = letters;
    }

    Pen pen() {
        return pen;
    }

    Lettering letters() {
        return letters;
    }

    void fill(Box box, int rgb) {
        if (box.width() > 0 && box.height() > 0) {
            pen.fill(List.of(box.frame().ring()), rgb, 1);
        }
    }

    /** Fills what a line of x and y in turn encloses. */
    void fill(float[] ring, int rgb) {
        pen.fill(List.of(ring), rgb, 1);
    }

    /** What lines are drawn with from now on. */
    void pen(int rgb, double widthPx, Dash dash) {
        stroke = new Stroke(rgb, widthPx, dash);
    }

    void line(int x1, int y1, int x2, int y2) {
        polyline((float) x1, (float) y1, (float) x2, (float) y2);
    }

    void outline(Box box) {
        polyline(box.frame().ring());
    }

    /** Through the middles of pixels where its width is odd, which keeps it sharp. */
    void polyline(float... points) {
        float middle = stroke.widthPx() % 2 == 1 ? 0.5f : 0;
        float[] moved = new float[points.length];
        for (int i = 0; i < points.length; i++) {
            moved[i] = points[i] + middle;
        }
        pen.stroke(List.of(moved), stroke);
    }

    <P> void curve(List<P> points, ToDoubleFunction<P> x, ToDoubleFunction<P> y) {
        float[] line = new float[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            line[2 * i] = (float) x.applyAsDouble(points.get(i));
            line[2 * i + 1] = (float) y.applyAsDouble(points.get(i));
        }
        if (points.size() > 1) {
            polyline(line);
        }
    }

    /** Of one or several lines. */
    Size size(String words, Face face) {
        List<String> lines = words.lines().toList();
        return new Size((int) Math.ceil(lines.stream().mapToDouble(line -> letters.width(line, face)).max().orElse(0)),
                Math.max(1, lines.size()) * height(face));
    }

    /** Of one line. */
    int height(Face face) {
        return (int) Math.ceil(letters.height(face));
    }

    /** @param x of the left edge, y of the upper one */
    void words(String words, int x, int y, Face face, int rgb) {
        int top = y;
        for (String line : words.lines().toList()) {
            pen.write(new Words(line, (float) (x + letters.width(line, face) / 2), top + height(face) / 2f, face, rgb, -1));
            top += height(face);
        }
    }

    /** Words on a slip of paper, so that lines below do not disturb them. */
    void slip(String words, Box place, Face face, int rgb) {
        pen.fill(List.of(place.frame().ring()), Palette.PAPER, SLIP_OPACITY);
        words(words, place.x(), place.y(), face, rgb);
    }

    void disc(int x, int y, int radius, int fill, int edge) {
        float[] ring = new float[2 * CORNERS_OF_A_DISC + 2];
        for (int i = 0; i <= CORNERS_OF_A_DISC; i++) {
            double turn = 2 * Math.PI * i / CORNERS_OF_A_DISC;
            ring[2 * i] = (float) (x + radius * Math.cos(turn));
            ring[2 * i + 1] = (float) (y + radius * Math.sin(turn));
        }
        fill(ring, fill);
        pen.stroke(List.of(ring), Stroke.solid(edge, 1));
    }

    /** A triangle that points up at AOS and down at LOS, a square on its corner at TCA. */
    void mark(String moment, int x, int y) {
        float[] outline = switch (moment) {
            case "AOS" -> new float[] {x - 6, y + 5, x + 6, y + 5, x, y - 6, x - 6, y + 5};
            case "LOS" -> new float[] {x - 6, y - 5, x + 6, y - 5, x, y + 6, x - 6, y - 5};
            default -> new float[] {x - 6, y, x, y - 6, x + 6, y, x, y + 6, x - 6, y};
        };
        fill(outline, Palette.PAPER);
        pen.stroke(List.of(outline), Stroke.solid(Palette.INK, 2));
    }

    /** A thin line to words that stand away from what they name. */
    void leader(int x, int y, Box place) {
        int toX = Math.max(place.x(), Math.min(x, place.x() + place.width()));
        int toY = Math.max(place.y(), Math.min(y, place.y() + place.height()));
        if (Math.hypot(toX - x, toY - y) > 14) {
            pen(Palette.QUIET, 1, Dash.SOLID);
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
            fill(new float[] {(float) (x + 8 * ux), (float) (y + 8 * uy), (float) (x - 5 * ux - 6 * uy),
                (float) (y - 5 * uy + 6 * ux), (float) (x - 5 * ux + 6 * uy), (float) (y - 5 * uy - 6 * ux)}, Palette.INK);
        }
    }

    void sun(int x, int y) {
        pen(Palette.INK, 1, Dash.SOLID);
        for (int i = 0; i < 8; i++) {
            double turn = Math.PI * i / 4;
            polyline((float) (x + 10 * Math.cos(turn)), (float) (y + 10 * Math.sin(turn)),
                    (float) (x + 14 * Math.cos(turn)), (float) (y + 14 * Math.sin(turn)));
        }
        disc(x, y, 7, Palette.SUN, Palette.INK);
    }

    void within(Box box, Runnable drawing) {
        pen.within(box.frame(), drawing);
    }

    /** Words in lines that are no wider than a column, broken between words. */
    List<String> broken(String words, Face face, int width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : words.lines().toList()) {
            StringBuilder line = new StringBuilder();
            for (String word : paragraph.split(" ")) {
                if (!line.isEmpty() && letters.width(line + " " + word, face) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.isEmpty() ? "" : " ").append(word);
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
