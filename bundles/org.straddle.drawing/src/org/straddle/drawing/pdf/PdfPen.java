package org.straddle.drawing.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Pen;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;

/** Draws on a page: pixels of a picture become points, from an upper left corner downwards. */
public final class PdfPen implements Pen {

    private static final float PAPER_OPACITY = 0.8f;
    /** Farther away than any edge of a sheet. */
    private static final double FAR_PX = 100_000;

    private final PDPageContentStream page;
    private final PdfLetters letters;
    private final double left;
    private final double top;
    private final double pointsPerPx;
    private final Map<Float, PDExtendedGraphicsState> opacities = new HashMap<>();
    private float current = -1;
    private Frame clip = new Frame(-FAR_PX, -FAR_PX, FAR_PX, FAR_PX);

    /**
     * @param left of pixel 0, points from the left edge of the sheet
     * @param top of pixel 0, points from its lower edge
     */
    public PdfPen(PDPageContentStream page, PdfLetters letters, double left, double top, double pointsPerPx) {
        this.page = page;
        this.letters = letters;
        this.left = left;
        this.top = top;
        this.pointsPerPx = pointsPerPx;
    }

    @Override
    public void fill(List<float[]> rings, int rgb, double opacity) {
        if (rings.isEmpty()) {
            return;
        }
        write(() -> {
            opacity((float) opacity);
            page.setNonStrokingColor(part(rgb, 16), part(rgb, 8), part(rgb, 0));
            for (float[] ring : rings) {
                trace(ring);
                page.closePath();
            }
            page.fillEvenOdd();
        });
    }

    @Override
    public void stroke(List<float[]> lines, Stroke stroke) {
        if (lines.isEmpty()) {
            return;
        }
        write(() -> {
            opacity(1);
            page.setStrokingColor(part(stroke.rgb(), 16), part(stroke.rgb(), 8), part(stroke.rgb(), 0));
            page.setLineWidth((float) (stroke.widthPx() * pointsPerPx));
            page.setLineJoinStyle(1);
            float[] dash = stroke.dash().lengths();
            for (int i = 0; i < dash.length; i++) {
                dash[i] *= (float) pointsPerPx;
            }
            page.setLineDashPattern(dash, 0);
            for (float[] line : lines) {
                trace(line);
            }
            page.stroke();
        });
    }

    @Override
    public void write(Words words) {
        double width = letters.width(words.text(), words.face());
        double height = letters.height(words.face());
        if (words.paperRgb() >= 0) {
            float l = (float) (words.x() - width / 2 - 1);
            float r = (float) (words.x() + width / 2 + 1);
            float t = (float) (words.y() - height / 2);
            float b = (float) (words.y() + height / 2);
            fill(List.of(new float[] {l, t, r, t, r, b, l, b, l, t}), words.paperRgb(), PAPER_OPACITY);
        }
        write(() -> {
            opacity(1);
            page.beginText();
            page.setNonStrokingColor(part(words.rgb(), 16), part(words.rgb(), 8), part(words.rgb(), 0));
            page.setFont(letters.font(words.face()), (float) (letters.sizePx() * words.face().size() * pointsPerPx));
            page.newLineAtOffset(x(words.x() - width / 2), y(words.y() + 0.36 * letters.sizePx() * words.face().size()));
            page.showText(letters.printable(words.text()));
            page.endText();
        });
    }

    @Override
    public Frame clip() {
        return clip;
    }

    @Override
    public void within(Frame box, Runnable drawing) {
        Frame before = clip;
        clip = before.common(box);
        write(() -> {
            page.saveGraphicsState();
            page.addRect(x(clip.left()), y(clip.bottom()), (float) (Math.max(0, clip.width()) * pointsPerPx),
                    (float) (Math.max(0, clip.height()) * pointsPerPx));
            page.clip();
        });
        current = -1;
        drawing.run();
        write(page::restoreGraphicsState);
        current = -1;
        clip = before;
    }

    private void trace(float[] points) throws IOException {
        page.moveTo(x(points[0]), y(points[1]));
        for (int i = 2; i < points.length; i += 2) {
            page.lineTo(x(points[i]), y(points[i + 1]));
        }
    }

    private float x(double px) {
        return (float) (left + px * pointsPerPx);
    }

    private float y(double px) {
        return (float) (top - px * pointsPerPx);
    }

    /** Each opacity is one object of the document, however often it is used. */
    private void opacity(float opacity) throws IOException {
        if (opacity != current) {
            page.setGraphicsStateParameters(opacities.computeIfAbsent(opacity, wanted -> {
                PDExtendedGraphicsState state = new PDExtendedGraphicsState();
                state.setNonStrokingAlphaConstant(wanted);
                return state;
            }));
            current = opacity;
        }
    }

    private static float part(int rgb, int shift) {
        return (rgb >> shift & 0xFF) / 255f;
    }

    private interface Writing {
        void run() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
