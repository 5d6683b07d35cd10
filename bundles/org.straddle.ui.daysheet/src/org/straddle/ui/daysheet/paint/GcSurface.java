package org.straddle.ui.daysheet.paint;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.Face;
import org.straddle.daysheet.paint.Ink;
import org.straddle.daysheet.paint.Stroke;
import org.straddle.daysheet.paint.Surface;

/** A screen, a picture or a printer. */
public final class GcSurface implements Surface {

    private final GC gc;
    private final SheetFonts fonts;

    public GcSurface(GC gc, SheetFonts fonts) {
        this.gc = gc;
        this.fonts = fonts;
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
    }

    @Override
    public void setAlpha(int alpha) {
        gc.setAlpha(alpha);
    }

    @Override
    public void setBackground(Ink ink) {
        gc.setBackground(color(ink));
    }

    @Override
    public void setLine(Ink ink, int width, Stroke stroke) {
        gc.setForeground(color(ink));
        gc.setLineWidth(width);
        gc.setLineStyle(switch (stroke) {
            case SOLID -> SWT.LINE_SOLID;
            case DASHED -> SWT.LINE_DASH;
            case DOTTED -> SWT.LINE_DOT;
        });
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        gc.drawLine(x1, y1, x2, y2);
    }

    @Override
    public void drawPolyline(int[] points) {
        gc.drawPolyline(points);
    }

    @Override
    public void drawPolygon(int[] points) {
        gc.drawPolygon(points);
    }

    @Override
    public void fillPolygon(int[] points) {
        gc.fillPolygon(points);
    }

    @Override
    public void drawRectangle(int x, int y, int width, int height) {
        gc.drawRectangle(x, y, width, height);
    }

    @Override
    public void fillRectangle(int x, int y, int width, int height) {
        gc.fillRectangle(x, y, width, height);
    }

    @Override
    public void drawRoundRectangle(int x, int y, int width, int height, int arc) {
        gc.drawRoundRectangle(x, y, width, height, arc, arc);
    }

    @Override
    public void fillRoundRectangle(int x, int y, int width, int height, int arc) {
        gc.fillRoundRectangle(x, y, width, height, arc, arc);
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        gc.fillOval(x, y, width, height);
    }

    @Override
    public void drawText(String text, Face face, Ink ink, int x, int y) {
        gc.setFont(fonts.font(face));
        gc.setForeground(color(ink));
        gc.drawText(text, x, y, SWT.DRAW_TRANSPARENT);
    }

    @Override
    public Box clip() {
        Rectangle clip = gc.getClipping();
        return new Box(clip.x, clip.y, clip.width, clip.height);
    }

    @Override
    public void setClip(Box box) {
        gc.setClipping(box.x(), box.y(), box.width(), box.height());
    }

    private static Color color(Ink ink) {
        return new Color(ink.red(), ink.green(), ink.blue());
    }
}
