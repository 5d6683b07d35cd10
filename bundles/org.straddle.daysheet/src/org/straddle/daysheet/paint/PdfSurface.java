package org.straddle.daysheet.paint;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.Face;

/**
 * A page of a PDF file, as lines and letters. Its y grows upwards, so each is turned on the way; a clip of such a page
 * can only shrink, so every new one begins from the state before the first.
 */
public final class PdfSurface implements Surface {

    /** How far the handles of a Bézier quarter circle reach, as a part of the radius. */
    private static final float QUARTER = 0.5523f;

    /** Writing to a stream can fail at every step. */
    private interface Step {
        void run() throws IOException;
    }

    private final PDPageContentStream content;
    private final PdfFaces faces;
    private final float height;
    private final Matrix place;
    private Box clip;
    private int alpha = 255;
    private Ink background = new Ink(0xFFFFFF);
    private Ink foreground = new Ink(0);
    private int width = 1;
    private Stroke stroke = Stroke.SOLID;

    /**
     * @param left  of pixel 0, points from the left edge of the paper
     * @param top   of pixel 0, points from its upper edge
     * @param scale points per pixel
     */
    public PdfSurface(PDPageContentStream content, PdfFaces faces, PDRectangle paper, float left, float top,
            float scale) {
        this.content = content;
        this.faces = faces;
        this.height = (paper.getHeight() - top) / scale;
        this.place = new Matrix(scale, 0, 0, scale, left, 0);
        this.clip = new Box(0, 0, Math.round((paper.getWidth() - left) / scale), Math.round(height));
        step(this::begin);
    }

    /** Leaves the page as it was found, for whoever draws next. */
    public void end() {
        step(content::restoreGraphicsState);
    }

    @Override
    public void setAlpha(int newAlpha) {
        alpha = newAlpha;
        step(() -> {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setStrokingAlphaConstant(alpha / 255f);
            state.setNonStrokingAlphaConstant(alpha / 255f);
            content.setGraphicsStateParameters(state);
        });
    }

    @Override
    public void setBackground(Ink ink) {
        background = ink;
    }

    @Override
    public void setLine(Ink ink, int newWidth, Stroke newStroke) {
        foreground = ink;
        width = newWidth;
        stroke = newStroke;
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        line(() -> {
            content.moveTo(x1 + 0.5f, y(y1) - 0.5f);
            content.lineTo(x2 + 0.5f, y(y2) - 0.5f);
        });
    }

    @Override
    public void drawPolyline(int[] points) {
        line(() -> path(points));
    }

    @Override
    public void drawPolygon(int[] points) {
        line(() -> {
            path(points);
            content.closePath();
        });
    }

    @Override
    public void fillPolygon(int[] points) {
        fill(() -> {
            path(points);
            content.closePath();
        });
    }

    @Override
    public void drawRectangle(int x, int y, int w, int h) {
        line(() -> content.addRect(x + 0.5f, y(y + h) - 0.5f, w, h));
    }

    @Override
    public void fillRectangle(int x, int y, int w, int h) {
        fill(() -> content.addRect(x, y(y + h), w, h));
    }

    @Override
    public void drawRoundRectangle(int x, int y, int w, int h, int arc) {
        line(() -> round(x + 0.5f, y(y + h) - 0.5f, w, h, arc / 2f));
    }

    @Override
    public void fillRoundRectangle(int x, int y, int w, int h, int arc) {
        fill(() -> round(x, y(y + h), w, h, arc / 2f));
    }

    @Override
    public void fillOval(int x, int y, int w, int h) {
        fill(() -> round(x, y(y + h), w, h, Math.max(w, h) / 2f));
    }

    @Override
    public void drawText(String text, Face face, Ink ink, int x, int y) {
        step(() -> {
            color(ink, false);
            content.beginText();
            content.setFont(faces.font(face), faces.size(face));
            // The foot of the letters lies about a fifth of the line above its lower edge.
            content.newLineAtOffset(x, y(y + faces.height(face)) + 0.22f * faces.height(face));
            content.showText(faces.drawable(text));
            content.endText();
        });
    }

    @Override
    public Box clip() {
        return clip;
    }

    @Override
    public void setClip(Box box) {
        clip = box;
        step(() -> {
            content.restoreGraphicsState();
            begin();
            content.addRect(box.x(), y(box.bottom()), box.width(), box.height());
            content.clip();
            if (alpha != 255) {
                setAlpha(alpha);
            }
        });
    }

    private void begin() throws IOException {
        content.saveGraphicsState();
        content.transform(place);
    }

    private float y(int y) {
        return height - y;
    }

    private void path(int[] points) throws IOException {
        content.moveTo(points[0], y(points[1]));
        for (int i = 2; i < points.length; i += 2) {
            content.lineTo(points[i], y(points[i + 1]));
        }
    }

    /** From its lower left corner. */
    private void round(float x, float y, float w, float h, float radius) throws IOException {
        float rx = Math.min(radius, w / 2);
        float ry = Math.min(radius, h / 2);
        float hx = rx * (1 - QUARTER);
        float hy = ry * (1 - QUARTER);
        content.moveTo(x + rx, y);
        content.lineTo(x + w - rx, y);
        content.curveTo(x + w - hx, y, x + w, y + hy, x + w, y + ry);
        content.lineTo(x + w, y + h - ry);
        content.curveTo(x + w, y + h - hy, x + w - hx, y + h, x + w - rx, y + h);
        content.lineTo(x + rx, y + h);
        content.curveTo(x + hx, y + h, x, y + h - hy, x, y + h - ry);
        content.lineTo(x, y + ry);
        content.curveTo(x, y + hy, x + hx, y, x + rx, y);
        content.closePath();
    }

    private void line(Step path) {
        step(() -> {
            color(foreground, true);
            content.setLineWidth(width);
            content.setLineDashPattern(switch (stroke) {
                case SOLID -> new float[0];
                case DASHED -> new float[] {5, 3};
                case DOTTED -> new float[] {1, 2};
            }, 0);
            path.run();
            content.stroke();
        });
    }

    private void fill(Step path) {
        step(() -> {
            color(background, false);
            path.run();
            content.fill();
        });
    }

    private void color(Ink ink, boolean stroking) throws IOException {
        float red = ink.red() / 255f;
        float green = ink.green() / 255f;
        float blue = ink.blue() / 255f;
        if (stroking) {
            content.setStrokingColor(red, green, blue);
        } else {
            content.setNonStrokingColor(red, green, blue);
        }
    }

    private static void step(Step step) {
        try {
            step.run();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
