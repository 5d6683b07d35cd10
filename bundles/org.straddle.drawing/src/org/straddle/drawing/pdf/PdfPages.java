package org.straddle.drawing.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Pen;

/** Pictures as the pages of a PDF file, A4 across; a picture that is larger than its page is made smaller. */
public final class PdfPages {

    private static final PDRectangle A4_ACROSS = new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth());
    private static final float MARGIN_PT = 28;
    private static final double MOST_POINTS_PER_PX = 0.75;
    /** Size of plain letters, pixels. */
    private static final double LETTERS_PX = 13;

    /** A picture of so many pixels. */
    public record Page(int widthPx, int heightPx, Consumer<Pen> drawing) {
    }

    private PdfPages() {
    }

    /** @param pages laid out with the letters of the file */
    public static byte[] of(String title, Function<Lettering, List<Page>> pages) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle(title);
            PdfLetters letters = new PdfLetters(document, LETTERS_PX);
            for (Page page : pages.apply(letters)) {
                add(document, letters, page);
            }
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            document.save(file);
            return file.toByteArray();
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private static void add(PDDocument document, PdfLetters letters, Page page) throws IOException {
        PDPage paper = new PDPage(A4_ACROSS);
        document.addPage(paper);
        double pointsPerPx = Math.min(MOST_POINTS_PER_PX, Math.min((A4_ACROSS.getWidth() - 2 * MARGIN_PT) / page.widthPx,
                (A4_ACROSS.getHeight() - 2 * MARGIN_PT) / page.heightPx));
        try (PDPageContentStream content = new PDPageContentStream(document, paper)) {
            page.drawing.accept(new PdfPen(content, letters, MARGIN_PT, A4_ACROSS.getHeight() - MARGIN_PT, pointsPerPx));
        }
    }
}
