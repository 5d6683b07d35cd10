package org.straddle.ui.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Pen;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;

/** Draws on a screen, an image or a printer. */
public final class GcPen implements Pen {

    private static final int PAPER_ALPHA = 205;
    /** The window system moves lines of an odd width by itself, so that those at whole numbers are sharp. */
    private static final float OWN_SHIFT_PX = 0.5f;
    /** As many lines are drawn one by one as fast as together. */
    private static final int FEW_LINES = 4;

    private final GC gc;
    private final ScreenLetters letters;
    private final Map<Integer, Color> colours = new HashMap<>();

    public GcPen(GC gc, ScreenLetters letters) {
        this.gc = gc;
        this.letters = letters;
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setFillRule(SWT.FILL_EVEN_ODD);
    }

    @Override
    public void fill(List<float[]> rings, int rgb, double opacity) {
        if (rings.isEmpty()) {
            return;
        }
        gc.setAlpha((int) Math.round(255 * opacity));
        gc.setBackground(colour(rgb));
        if (rings.size() == 1 && isBoxOfPixels(rings.get(0))) {
            float[] box = rings.get(0);
            gc.fillRectangle((int) box[0], (int) box[1], (int) (box[2] - box[0]), (int) (box[5] - box[1]));
        } else {
            Path path = path(rings, true, 0);
            gc.fillPath(path);
            path.dispose();
        }
        gc.setAlpha(255);
    }

    @Override
    public void stroke(List<float[]> lines, Stroke stroke) {
        if (lines.isEmpty()) {
            return;
        }
        gc.setForeground(colour(stroke.rgb()));
        float[] dash = stroke.dash().lengths();
        gc.setLineAttributes(new LineAttributes((float) stroke.widthPx(), SWT.CAP_FLAT, SWT.JOIN_ROUND,
                dash.length == 0 ? SWT.LINE_SOLID : SWT.LINE_CUSTOM, dash.length == 0 ? null : dash, 0, 10));
        if (lines.size() <= FEW_LINES && stroke.widthPx() == 1 && lines.stream().allMatch(GcPen::isLineOfPixels)) {
            for (float[] line : lines) {
                gc.drawLine((int) line[0], (int) line[1], (int) line[2], (int) line[3]);
            }
        } else {
            Path path = path(lines, false, stroke.widthPx() % 2 == 1 ? -OWN_SHIFT_PX : 0);
            gc.drawPath(path);
            path.dispose();
        }
    }

    @Override
    public void write(Words words) {
        gc.setFont(letters.font(words.face()));
        double width = letters.width(words.text(), words.face());
        double height = letters.height(words.face());
        int left = (int) Math.round(words.x() - width / 2);
        int top = (int) Math.round(words.y() - height / 2);
        if (words.paperRgb() >= 0) {
            gc.setAlpha(PAPER_ALPHA);
            gc.setBackground(colour(words.paperRgb()));
            gc.fillRectangle(left - 1, top, (int) Math.ceil(width) + 2, (int) Math.ceil(height));
            gc.setAlpha(255);
        }
        gc.setForeground(colour(words.rgb()));
        gc.drawText(words.text(), left, top, SWT.DRAW_TRANSPARENT);
    }

    @Override
    public Frame clip() {
        Rectangle clip = gc.getClipping();
        return new Frame(clip.x, clip.y, clip.x + clip.width, clip.y + clip.height);
    }

    @Override
    public void within(Frame box, Runnable drawing) {
        Rectangle before = gc.getClipping();
        int left = (int) Math.round(box.left());
        int top = (int) Math.round(box.top());
        gc.setClipping(before.intersection(new Rectangle(left, top, (int) Math.round(box.right()) - left,
                (int) Math.round(box.bottom()) - top)));
        drawing.run();
        gc.setClipping(before);
    }

    // A path is an object of the window system; boxes and lines of whole pixels, of which a day sheet has thousands, are
    // drawn faster without, and look the same.

    /** From its upper left corner clockwise, closed or not. */
    private static boolean isBoxOfPixels(float[] ring) {
        return (ring.length == 8 || ring.length == 10) && ring[0] == ring[6] && ring[2] == ring[4] && ring[1] == ring[3]
                && ring[5] == ring[7] && ring[2] > ring[0] && ring[5] > ring[1] && isWhole(ring[0]) && isWhole(ring[1])
                && isWhole(ring[2]) && isWhole(ring[5]);
    }

    /** Through the middles of pixels. */
    private static boolean isLineOfPixels(float[] line) {
        return line.length == 4 && isWhole(line[0] - 0.5f) && isWhole(line[1] - 0.5f) && isWhole(line[2] - 0.5f)
                && isWhole(line[3] - 0.5f) && line[0] >= 0 && line[1] >= 0 && line[2] >= 0 && line[3] >= 0;
    }

    private static boolean isWhole(float number) {
        return number == Math.rint(number);
    }

    private Path path(List<float[]> lines, boolean closed, float shift) {
        Path path = new Path(gc.getDevice());
        for (float[] line : lines) {
            path.moveTo(line[0] + shift, line[1] + shift);
            for (int i = 2; i < line.length; i += 2) {
                path.lineTo(line[i] + shift, line[i + 1] + shift);
            }
            if (closed) {
                path.close();
            }
        }
        return path;
    }

    private Color colour(int rgb) {
        return colours.computeIfAbsent(rgb, value -> new Color(value >> 16 & 0xFF, value >> 8 & 0xFF, value & 0xFF));
    }
}
