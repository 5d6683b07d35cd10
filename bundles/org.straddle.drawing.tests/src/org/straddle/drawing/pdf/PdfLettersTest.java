package org.straddle.drawing.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Paper;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;

class PdfLettersTest {

    @Test
    void lettersBeyondWesternEuropeArePrinted() throws IOException {
        byte[] file = page(List.of("Žižka Őrség Łódź", "Αθήνα Київ", "Egilsstaðir Höfn ½ →"));
        try (PDDocument read = Loader.loadPDF(file)) {
            String text = new PDFTextStripper().getText(read);
            assertTrue(text.contains("Žižka Őrség Łódź") && text.contains("Αθήνα Київ")
                    && text.contains("Egilsstaðir Höfn ½ →"), text);
        }
    }

    @Test
    void everyFontOfAPageIsInTheFile() throws IOException {
        try (PDDocument read = Loader.loadPDF(page(List.of("Höfn")))) {
            PDResources resources = read.getPage(0).getResources();
            int fonts = 0;
            for (var name : resources.getFontNames()) {
                assertTrue(resources.getFont(name).isEmbedded(), name.getName());
                fonts++;
            }
            assertEquals(2, fonts);
        }
    }

    @Test
    void lettersThatTheFontLacksAreMarked() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfLetters letters = new PdfLetters(document, 12);
            assertEquals("H\u0151fn ??", letters.printable("H\u0151fn \u9ce5\u5cf6"));
            assertTrue(letters.width("IP04", Face.LARGE) > letters.width("IP04", Face.SMALL));
        }
    }

    /** The library says so when it looks for a font on the machine instead of in the file, and leaves a list of them. */
    @Test
    void nothingIsLookedForOnTheMachine() throws IOException {
        List<String> said = new ArrayList<>();
        Handler ear = new Handler() {
            @Override
            public void publish(LogRecord entry) {
                said.add(entry.getLoggerName() + ": " + entry.getMessage());
            }

            @Override
            public void flush() {
            }

            @Override
            public void close() {
            }
        };
        Logger library = Logger.getLogger("org.apache");
        library.addHandler(ear);
        try (PDDocument read = Loader.loadPDF(page(List.of("Reykjavík", "Ψ")))) {
            new PDFRenderer(read).renderImage(0);
        } finally {
            library.removeHandler(ear);
        }
        assertEquals(List.of(), said);
        assertInstanceOf(OwnFonts.class, FontMappers.instance(), "another mapper reads the fonts of the machine");
    }

    @Test
    void nothingIsDrawnOutsideABoxWithinABox() throws IOException {
        byte[] file = drawn(pen -> pen.within(new Frame(10, 10, 60, 60), () -> {
            pen.within(new Frame(30, 30, 200, 200), () -> pen.fill(List.of(pen.clip().grown(500).ring()), Paper.BLUE, 1));
            pen.stroke(List.of(new float[] {0, 15, 200, 15}), Stroke.solid(Paper.VERMILLION, 4));
        }));
        try (PDDocument read = Loader.loadPDF(file)) {
            BufferedImage seen = new PDFRenderer(read).renderImage(0);
            assertEquals(Paper.BLUE, seen.getRGB(45, 45) & 0xFFFFFF);
            assertEquals(Paper.WHITE, seen.getRGB(20, 45) & 0xFFFFFF);
            assertEquals(Paper.WHITE, seen.getRGB(70, 45) & 0xFFFFFF);
            assertEquals(Paper.VERMILLION, seen.getRGB(20, 15) & 0xFFFFFF);
            assertEquals(Paper.WHITE, seen.getRGB(70, 15) & 0xFFFFFF);
        }
    }

    private interface Drawing {
        void on(PdfPen pen);
    }

    private static byte[] page(List<String> lines) throws IOException {
        return drawn(pen -> {
            for (int i = 0; i < lines.size(); i++) {
                pen.write(new Words(lines.get(i), 100, 20 + 30 * i, i % 2 == 0 ? Face.PLAIN : Face.STRONG, Paper.INK, -1));
                pen.write(new Words("x", 100, 150, Face.STRONG, Paper.INK, Paper.WHITE));
            }
        });
    }

    private static byte[] drawn(Drawing drawing) throws IOException {
        try (PDDocument document = new PDDocument(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PDPage page = new PDPage(new PDRectangle(200, 200));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                drawing.on(new PdfPen(content, new PdfLetters(document, 12), 0, 200, 1));
            }
            document.save(out);
            return out.toByteArray();
        }
    }
}
