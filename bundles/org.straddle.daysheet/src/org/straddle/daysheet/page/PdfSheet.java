package org.straddle.daysheet.page;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.straddle.daysheet.layout.Overlay;
import org.straddle.daysheet.layout.TextMeasure;
import org.straddle.daysheet.paint.Highlight;
import org.straddle.daysheet.paint.SheetPainter;
import org.straddle.daysheet.paint.Surface;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.drawing.pdf.PdfLetters;
import org.straddle.drawing.pdf.PdfPen;
import org.straddle.words.Catalogue;

/** The sheet as a PDF file, A4 across. Needs no display and no printer. */
public final class PdfSheet {

    private static final Catalogue TEXTS = Catalogue.of(PdfSheet.class);

    /** ISO 216: A4 is 210 by 297 mm, which is 595 by 842 points. */
    private static final PDRectangle A4_ACROSS = new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth());
    private static final float MARGIN_PT = 28;
    /** So that ten teams have room with words that can be read on paper. */
    private static final float POINTS_PER_PIXEL = 0.75f;

    /** Size of plain letters, pixels. */
    private static final double LETTERS_PX = 11;

    private PdfSheet() {
    }

    /**
     * Writes beside the file and moves into its place, so that a failure leaves an older file as it was.
     *
     * @return how many pages
     */
    public static int write(DaySheet sheet, Path file) throws IOException {
        Path fresh = Files.createTempFile(file.toAbsolutePath().getParent(), ".day-sheet", ".part");
        try (PDDocument document = document(sheet)) {
            document.save(fresh.toFile());
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
            return document.getNumberOfPages();
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** The pages as pictures, for a printer. They show the file as it is saved: only then are the letters in it. */
    public static List<BufferedImage> pictures(DaySheet sheet, int dpi) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (PDDocument document = document(sheet)) {
            document.save(file);
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
        try (PDDocument saved = Loader.loadPDF(file.toByteArray())) {
            PDFRenderer renderer = new PDFRenderer(saved);
            List<BufferedImage> pictures = new ArrayList<>();
            for (int page = 0; page < saved.getNumberOfPages(); page++) {
                pictures.add(renderer.renderImageWithDPI(page, dpi, ImageType.RGB));
            }
            return pictures;
        }
    }

    private static PDDocument document(DaySheet sheet) throws IOException {
        PDDocument document = new PDDocument();
        try {
            document.getDocumentInformation().setTitle(TEXTS.text("file.title"));
            PdfLetters letters = new PdfLetters(document, LETTERS_PX);
            TextMeasure measure = TextMeasure.of(letters);
            for (SheetPage page : SheetPages.of(sheet, pixels(A4_ACROSS.getWidth()), pixels(A4_ACROSS.getHeight()), measure)) {
                add(document, page, letters, new SheetPainter(measure));
            }
            return document;
        } catch (IOException | RuntimeException failure) {
            document.close();
            throw failure;
        }
    }

    private static int pixels(float points) {
        return Math.round((points - 2 * MARGIN_PT) / POINTS_PER_PIXEL);
    }

    private static void add(PDDocument document, SheetPage page, PdfLetters letters, SheetPainter painter)
            throws IOException {
        PDPage paper = new PDPage(A4_ACROSS);
        document.addPage(paper);
        try (PDPageContentStream content = new PDPageContentStream(document, paper)) {
            painter.words(surface(content, letters, 0), List.of(page.title(), page.number()));
            painter.paint(surface(content, letters, page.sheet().y()), page.layout(), Highlight.NONE, Overlay.NONE, "");
        }
    }

    /** @param top pixels below the margin */
    private static Surface surface(PDPageContentStream content, PdfLetters letters, int top) {
        return new Surface(new PdfPen(content, letters, MARGIN_PT,
                A4_ACROSS.getHeight() - MARGIN_PT - top * POINTS_PER_PIXEL, POINTS_PER_PIXEL), letters);
    }
}
