package org.straddle.daysheet.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.Label;
import org.straddle.daysheet.layout.TextMeasure;
import org.straddle.daysheet.sheet.Hatch;
import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke.Dash;

/** Draws boxes, words and hatches on a surface. */
final class Brush {

    private final Surface surface;
    private final TextMeasure measure;

    Brush(Surface surface, TextMeasure measure) {
        this.surface = surface;
        this.measure = measure;
    }

    Surface surface() {
        return surface;
    }

    void fill(Box box, int color) {
        surface.setBackground(color);
        surface.fillRectangle(box.x(), box.y(), box.width(), box.height());
    }

    void fillRound(Box box, int arc, int color) {
        surface.setBackground(color);
        surface.fillRoundRectangle(box.x(), box.y(), box.width(), box.height(), arc);
    }

    void frame(Box box, int color) {
        if (!box.isEmpty()) {
            line(color, 1, Dash.SOLID);
            surface.drawRectangle(box.x(), box.y(), box.width() - 1, box.height() - 1);
        }
    }

    void frameRound(Box box, int arc, int color, int width) {
        if (!box.isEmpty()) {
            line(color, width, Dash.SOLID);
            surface.drawRoundRectangle(box.x(), box.y(), box.width() - 1, box.height() - 1, arc);
        }
    }

    /** Sets how the next lines look. */
    void line(int color, int width, Dash stroke) {
        surface.setLine(color, width, stroke);
    }

    void text(Optional<Label> label, int color) {
        label.ifPresent(words -> text(words, color));
    }

    void text(Label label, int color) {
        surface.drawText(label.text(), label.face(), color, label.box().x(), label.box().y());
    }

    /** Words in the middle of a box. */
    void textIn(Box box, String text, Face face, int color) {
        surface.drawText(text, face, color, box.x() + (box.width() - measure.width(text, face) + 1) / 2,
                box.y() + (box.height() - measure.height(face)) / 2);
    }

    /** Draws with everything outside the box left alone. */
    void within(Box box, Runnable drawing) {
        if (!surface.clip().common(box).isEmpty()) {
            surface.within(box, drawing);
        }
    }

    /** Covers the box with a hatch of lines or dots, as far as it is in sight. */
    void hatch(Box whole, Hatch hatch, int color, int pitch) {
        Box box = whole.common(surface.clip());
        if (box.isEmpty()) {
            return;
        }
        line(color, 1, Dash.SOLID);
        surface.setBackground(color);
        switch (hatch) {
            case NONE -> { }
            case SOLID -> fill(box, color);
            case RISING -> rising(box, pitch);
            case FALLING -> falling(box, pitch);
            case CROSSED -> {
                rising(box, pitch + 1);
                falling(box, pitch + 1);
            }
            case UPRIGHT -> upright(box, pitch);
            case LEVEL -> level(box, pitch);
            case DOTS -> dots(box, pitch + 1);
        }
    }

    // All hatches start at multiples of the pitch on the canvas, so that neighbouring pieces join. Lines are cut at the
    // box by arithmetic: a clipping for each of hundreds of small boxes takes longer than all lines.

    /** Lines x + y = c. */
    private void rising(Box box, int pitch) {
        int right = box.right() - 1;
        int bottom = box.bottom() - 1;
        List<int[]> lines = new ArrayList<>();
        for (int c = next(box.x() + box.y(), pitch); c <= right + bottom; c += pitch) {
            int top = Math.max(box.y(), c - right);
            int low = Math.min(bottom, c - box.x());
            lines.add(new int[] {c - top, top, c - low, low});
        }
        surface.drawLines(lines);
    }

    /** Lines x - y = c. */
    private void falling(Box box, int pitch) {
        int right = box.right() - 1;
        int bottom = box.bottom() - 1;
        List<int[]> lines = new ArrayList<>();
        for (int c = next(box.x() - bottom, pitch); c <= right - box.y(); c += pitch) {
            int top = Math.max(box.y(), box.x() - c);
            int low = Math.min(bottom, right - c);
            lines.add(new int[] {c + top, top, c + low, low});
        }
        surface.drawLines(lines);
    }

    private void upright(Box box, int pitch) {
        List<int[]> lines = new ArrayList<>();
        for (int x = next(box.x(), pitch); x < box.right(); x += pitch) {
            lines.add(new int[] {x, box.y(), x, box.bottom() - 1});
        }
        surface.drawLines(lines);
    }

    private void level(Box box, int pitch) {
        List<int[]> lines = new ArrayList<>();
        for (int y = next(box.y(), pitch); y < box.bottom(); y += pitch) {
            lines.add(new int[] {box.x(), y, box.right() - 1, y});
        }
        surface.drawLines(lines);
    }

    private void dots(Box box, int pitch) {
        List<int[]> corners = new ArrayList<>();
        for (int y = next(box.y(), pitch); y < box.bottom() - 1; y += pitch) {
            int shift = Math.floorMod(y / pitch, 2) * pitch / 2;
            for (int x = next(box.x() - shift, pitch) + shift; x < box.right() - 1; x += pitch) {
                corners.add(new int[] {x, y});
            }
        }
        surface.fillSquares(corners, 2);
    }

    private static int next(int from, int pitch) {
        return -Math.floorDiv(-from, pitch) * pitch;
    }
}
