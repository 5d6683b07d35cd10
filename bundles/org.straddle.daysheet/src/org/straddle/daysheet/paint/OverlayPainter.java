package org.straddle.daysheet.paint;

import org.straddle.check.Severity;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.Overlay;
import org.straddle.daysheet.sheet.Hatch;
import org.straddle.drawing.Stroke.Dash;

/**
 * Draws what lies over the lanes. A place that fits is framed and hatched, besides being green; what is carried has a tick
 * on a place that fits, and a cross and a crossed hatch on any other.
 */
final class OverlayPainter {

    private static final int VEIL = 70;

    private final Brush pen;
    private final Glyphs glyphs;

    OverlayPainter(Brush pen, Glyphs glyphs) {
        this.pen = pen;
        this.glyphs = glyphs;
    }

    void lit(Overlay overlay) {
        overlay.lit().forEach(this::lit);
    }

    void lit(Box box) {
        pen.surface().setAlpha(VEIL);
        pen.fill(box, Palette.FITS);
        pen.surface().setAlpha(150);
        pen.hatch(box, Hatch.FALLING, Palette.FITS, 9);
        pen.surface().setAlpha(255);
        pen.frameRound(box, 4, Palette.FITS, 2);
    }

    void ghost(Overlay.Ghost ghost) {
        Box box = ghost.box();
        int color = ghost.fits() ? Palette.FITS : Palette.TROUBLE;
        pen.surface().setAlpha(160);
        pen.fillRound(box, 6, Palette.PAPER);
        pen.surface().setAlpha(255);
        if (!ghost.fits()) {
            pen.hatch(box, Hatch.CROSSED, color, 6);
        }
        pen.line(Palette.INK, 2, Dash.DASHED);
        pen.surface().drawRoundRectangle(box.x(), box.y(), Math.max(0, box.width() - 1), box.height() - 1, 6);
        pen.line(Palette.INK, 1, Dash.SOLID);
        balloon(ghost, color);
    }

    void message(Overlay.Message message) {
        pen.fill(message.box(), Palette.PAPER);
        pen.frame(message.box(), message.trouble() ? Palette.TROUBLE : Palette.QUIET);
        glyphs.severity(message.trouble() ? Severity.BLOCKER : Severity.ADVICE, message.mark());
        message.lines().forEach(line -> pen.text(line, Palette.INK));
    }

    private void balloon(Overlay.Ghost ghost, int color) {
        pen.fillRound(ghost.balloon(), 8, Palette.PAPER);
        pen.frameRound(ghost.balloon(), 8, color, 2);
        mark(ghost.mark(), ghost.fits(), color);
        ghost.lines().forEach(line -> pen.text(line, Palette.INK));
    }

    /** A tick or a cross. */
    private void mark(Box box, boolean fits, int color) {
        Surface surface = pen.surface();
        pen.line(color, 3, Dash.SOLID);
        if (fits) {
            surface.drawPolyline(new int[] {box.x(), box.middleY(), box.x() + box.width() / 3, box.bottom() - 1, box.right(),
                    box.y()});
        } else {
            surface.drawLine(box.x() + 1, box.y() + 1, box.right() - 1, box.bottom() - 1);
            surface.drawLine(box.right() - 1, box.y() + 1, box.x() + 1, box.bottom() - 1);
        }
    }
}
