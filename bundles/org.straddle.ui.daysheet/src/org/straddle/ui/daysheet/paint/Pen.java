package org.straddle.ui.daysheet.paint;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.straddle.ui.daysheet.layout.Box;
import org.straddle.ui.daysheet.layout.Face;
import org.straddle.ui.daysheet.layout.Label;
import org.straddle.ui.daysheet.sheet.Hatch;

/** Draws boxes, words and hatches on a GC. */
final class Pen {

    private final GC gc;
    private final SheetFonts fonts;

    Pen(GC gc, SheetFonts fonts) {
        this.gc = gc;
        this.fonts = fonts;
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
    }

    GC gc() {
        return gc;
    }

    void fill(Box box, Color color) {
        gc.setBackground(color);
        gc.fillRectangle(box.x(), box.y(), box.width(), box.height());
    }

    void fillRound(Box box, int arc, Color color) {
        gc.setBackground(color);
        gc.fillRoundRectangle(box.x(), box.y(), box.width(), box.height(), arc, arc);
    }

    void frame(Box box, Color color) {
        if (!box.isEmpty()) {
            line(color, 1, SWT.LINE_SOLID);
            gc.drawRectangle(box.x(), box.y(), box.width() - 1, box.height() - 1);
        }
    }

    void frameRound(Box box, int arc, Color color, int width) {
        if (!box.isEmpty()) {
            line(color, width, SWT.LINE_SOLID);
            gc.drawRoundRectangle(box.x(), box.y(), box.width() - 1, box.height() - 1, arc, arc);
        }
    }

    /** Sets how the next lines look. */
    void line(Color color, int width, int style) {
        gc.setForeground(color);
        gc.setLineWidth(width);
        gc.setLineStyle(style);
    }

    void text(Optional<Label> label, Color color) {
        label.ifPresent(words -> text(words, color));
    }

    void text(Label label, Color color) {
        gc.setFont(fonts.font(label.face()));
        gc.setForeground(color);
        gc.drawText(label.text(), label.box().x(), label.box().y(), SWT.DRAW_TRANSPARENT);
    }

    /** Words in the middle of a box. */
    void textIn(Box box, String text, Face face, Color color) {
        gc.setFont(fonts.font(face));
        gc.setForeground(color);
        gc.drawText(text, box.x() + (box.width() - fonts.width(text, face) + 1) / 2,
                box.y() + (box.height() - fonts.height(face)) / 2, SWT.DRAW_TRANSPARENT);
    }

    /** Draws with everything outside the box left alone. */
    void within(Box box, Runnable drawing) {
        Rectangle before = gc.getClipping();
        Rectangle inner = before.intersection(new Rectangle(box.x(), box.y(), box.width(), box.height()));
        if (!inner.isEmpty()) {
            gc.setClipping(inner);
            drawing.run();
            gc.setClipping(before);
        }
    }

    /** Covers the box with a hatch of lines or dots, as far as it is in sight. */
    void hatch(Box whole, Hatch hatch, Color color, int pitch) {
        Rectangle clip = gc.getClipping();
        Box box = whole.common(new Box(clip.x, clip.y, clip.width, clip.height));
        if (box.isEmpty()) {
            return;
        }
        line(color, 1, SWT.LINE_SOLID);
        gc.setBackground(color);
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
        for (int c = next(box.x() + box.y(), pitch); c <= right + bottom; c += pitch) {
            int top = Math.max(box.y(), c - right);
            int low = Math.min(bottom, c - box.x());
            gc.drawLine(c - top, top, c - low, low);
        }
    }

    /** Lines x - y = c. */
    private void falling(Box box, int pitch) {
        int right = box.right() - 1;
        int bottom = box.bottom() - 1;
        for (int c = next(box.x() - bottom, pitch); c <= right - box.y(); c += pitch) {
            int top = Math.max(box.y(), box.x() - c);
            int low = Math.min(bottom, right - c);
            gc.drawLine(c + top, top, c + low, low);
        }
    }

    private void upright(Box box, int pitch) {
        for (int x = next(box.x(), pitch); x < box.right(); x += pitch) {
            gc.drawLine(x, box.y(), x, box.bottom() - 1);
        }
    }

    private void level(Box box, int pitch) {
        for (int y = next(box.y(), pitch); y < box.bottom(); y += pitch) {
            gc.drawLine(box.x(), y, box.right() - 1, y);
        }
    }

    private void dots(Box box, int pitch) {
        for (int y = next(box.y(), pitch); y < box.bottom() - 1; y += pitch) {
            int shift = Math.floorMod(y / pitch, 2) * pitch / 2;
            for (int x = next(box.x() - shift, pitch) + shift; x < box.right() - 1; x += pitch) {
                gc.fillRectangle(x, y, 2, 2);
            }
        }
    }

    private static int next(int from, int pitch) {
        return -Math.floorDiv(-from, pitch) * pitch;
    }
}
