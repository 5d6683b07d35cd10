package org.straddle.daysheet.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.straddle.daysheet.layout.Overlay;
import org.straddle.daysheet.paint.Highlight;
import org.straddle.daysheet.paint.PdfFaces;
import org.straddle.daysheet.paint.PdfSurface;
import org.straddle.daysheet.paint.SheetPainter;
import org.straddle.daysheet.sheet.DaySheet;

/** The sheet as a PDF file, A4 across. Needs no display and no printer. */
public final class PdfSheet {

    /** ISO 216: A4 is 210 by 297 mm, which is 595 by 842 points. */
    private static final PDRectangle A4_ACROSS = new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth());
    private static final float MARGIN_PT = 28;
    /** So that ten teams have room with words that can be read on paper. */
    private static final float POINTS_PER_PIXEL = 0.75f;

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

    /** The pages as pictures, for a printer. */
    public static List<BufferedImage> pictures(DaySheet sheet, int dpi) throws IOException {
        try (PDDocument document = document(sheet)) {
            List<BufferedImage> pictures = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                pictures.add(new PDFRenderer(document).renderImageWithDPI(page, dpi, ImageType.RGB));
            }
            return pictures;
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private static PDDocument document(DaySheet sheet) throws IOException {
        PDDocument document = new PDDocument();
        try {
            document.getDocumentInformation().setTitle("Day sheet");
            PdfFaces faces = new PdfFaces();
            for (SheetPage page : SheetPages.of(sheet, pixels(A4_ACROSS.getWidth()), pixels(A4_ACROSS.getHeight()), faces)) {
                add(document, page, faces);
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

    private static void add(PDDocument document, SheetPage page, PdfFaces faces) throws IOException {
        PDPage paper = new PDPage(A4_ACROSS);
        document.addPage(paper);
        try (PDPageContentStream content = new PDPageContentStream(document, paper)) {
            PdfSurface head = new PdfSurface(content, faces, A4_ACROSS, MARGIN_PT, MARGIN_PT, POINTS_PER_PIXEL);
            SheetPainter painter = new SheetPainter(faces);
            painter.words(head, List.of(page.title(), page.number()));
            head.end();
            PdfSurface body = new PdfSurface(content, faces, A4_ACROSS, MARGIN_PT,
                    MARGIN_PT + page.sheet().y() * POINTS_PER_PIXEL, POINTS_PER_PIXEL);
            painter.paint(body, page.layout(), Highlight.NONE, Overlay.NONE, "");
            body.end();
        }
    }
}
