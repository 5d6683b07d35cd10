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
        Path path = path(rings, true);
        gc.setAlpha((int) Math.round(255 * opacity));
        gc.setBackground(colour(rgb));
        gc.fillPath(path);
        gc.setAlpha(255);
        path.dispose();
    }

    @Override
    public void stroke(List<float[]> lines, Stroke stroke) {
        if (lines.isEmpty()) {
            return;
        }
        Path path = path(lines, false);
        gc.setForeground(colour(stroke.rgb()));
        float[] dash = stroke.dash().lengths();
        gc.setLineAttributes(new LineAttributes((float) stroke.widthPx(), SWT.CAP_FLAT, SWT.JOIN_ROUND,
                dash.length == 0 ? SWT.LINE_SOLID : SWT.LINE_CUSTOM, dash.length == 0 ? null : dash, 0, 10));
        gc.drawPath(path);
        path.dispose();
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

    private Path path(List<float[]> lines, boolean closed) {
        Path path = new Path(gc.getDevice());
        for (float[] line : lines) {
            path.moveTo(line[0], line[1]);
            for (int i = 2; i < line.length; i += 2) {
                path.lineTo(line[i], line[i + 1]);
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
