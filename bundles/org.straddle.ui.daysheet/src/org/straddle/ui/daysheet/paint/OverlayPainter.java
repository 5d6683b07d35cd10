package org.straddle.ui.daysheet.paint;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.straddle.check.Severity;
import org.straddle.ui.daysheet.layout.Box;
import org.straddle.ui.daysheet.layout.Overlay;
import org.straddle.ui.daysheet.sheet.Hatch;

/**
 * Draws what lies over the lanes. A legal place is framed and hatched, besides being green; what is carried has a tick
 * on a legal place, and a cross and a crossed hatch on any other.
 */
final class OverlayPainter {

    private static final int VEIL = 70;

    private final Pen pen;
    private final Glyphs glyphs;

    OverlayPainter(Pen pen, Glyphs glyphs) {
        this.pen = pen;
        this.glyphs = glyphs;
    }

    void lit(Overlay overlay) {
        overlay.lit().forEach(this::lit);
    }

    void lit(Box box) {
        pen.gc().setAlpha(VEIL);
        pen.fill(box, Palette.LEGAL);
        pen.gc().setAlpha(150);
        pen.hatch(box, Hatch.FALLING, Palette.LEGAL, 9);
        pen.gc().setAlpha(255);
        pen.frameRound(box, 4, Palette.LEGAL, 2);
    }

    void ghost(Overlay.Ghost ghost) {
        Box box = ghost.box();
        Color color = ghost.legal() ? Palette.LEGAL : Palette.TROUBLE;
        pen.gc().setAlpha(160);
        pen.fillRound(box, 6, Palette.PAPER);
        pen.gc().setAlpha(255);
        if (!ghost.legal()) {
            pen.hatch(box, Hatch.CROSSED, color, 6);
        }
        pen.line(Palette.INK, 2, SWT.LINE_DASH);
        pen.gc().drawRoundRectangle(box.x(), box.y(), Math.max(0, box.width() - 1), box.height() - 1, 6, 6);
        pen.line(Palette.INK, 1, SWT.LINE_SOLID);
        balloon(ghost, color);
    }

    void message(Overlay.Message message) {
        pen.fill(message.box(), Palette.PAPER);
        pen.frame(message.box(), message.trouble() ? Palette.TROUBLE : Palette.QUIET);
        glyphs.severity(message.trouble() ? Severity.BLOCKER : Severity.ADVICE, message.mark());
        pen.text(message.words(), Palette.INK);
    }

    private void balloon(Overlay.Ghost ghost, Color color) {
        pen.fillRound(ghost.balloon(), 8, Palette.PAPER);
        pen.frameRound(ghost.balloon(), 8, color, 2);
        mark(ghost.mark(), ghost.legal(), color);
        ghost.lines().forEach(line -> pen.text(line, Palette.INK));
    }

    /** A tick or a cross. */
    private void mark(Box box, boolean legal, Color color) {
        GC gc = pen.gc();
        pen.line(color, 3, SWT.LINE_SOLID);
        if (legal) {
            gc.drawPolyline(new int[] {box.x(), box.middleY(), box.x() + box.width() / 3, box.bottom() - 1, box.right(),
                    box.y()});
        } else {
            gc.drawLine(box.x() + 1, box.y() + 1, box.right() - 1, box.bottom() - 1);
            gc.drawLine(box.right() - 1, box.y() + 1, box.x() + 1, box.bottom() - 1);
        }
    }
}
