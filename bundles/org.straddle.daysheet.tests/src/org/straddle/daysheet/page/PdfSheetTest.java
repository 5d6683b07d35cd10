package org.straddle.daysheet.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.daysheet.Rove;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.model.Stop;

/** Read back with PDFBox: what a reader of the file would find on its pages. */
class PdfSheetTest {

    @TempDir
    Path folder;

    private final Rove rove = new Rove("Atlantic/Reykjavik").team(1, "08-20", "+1 08-20").team(2, "08-20", "+1 08-20");

    private static String words(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    private PDDocument written(DaySheet sheet) throws IOException {
        Path file = folder.resolve("sheet.pdf");
        PdfSheet.write(sheet, file);
        return Loader.loadPDF(file.toFile());
    }

    @Test
    void everyDayHasItsPageWithTitleZoneAndLegend() throws IOException {
        Stop stop = rove.stop(1, "Höfn Mark", 64, -21, "10-13");
        rove.turn(stop, "Tern-1 (demo)", "10:30-11");
        rove.stop(2, "Redshank Mark", 64, -21, "+1 10-12");
        try (PDDocument document = written(rove.sheet())) {
            assertEquals(2, document.getNumberOfPages());
            String first = words(document, 1);
            for (String words : new String[] {"Rove · Friday 20 June 2031 · UTC, and local time in Atlantic/Reykjavik",
                    "Page 1 of 2", "Team 1", "Team 2", "Höfn Mark", "09:00", "T1", "too little time to drive", "blocker",
                    "T1 Tern-1 (demo)"}) {
                assertTrue(first.contains(words), words + " in " + first);
            }
            assertTrue(!first.contains("Redshank Mark"), first);
            assertTrue(words(document, 2).contains("Redshank Mark"), words(document, 2));
        }
    }

    @Test
    void teamsThatHaveNoRoomGoToTheNextPage() throws IOException {
        for (int team = 3; team <= 30; team++) {
            rove.team(team, "08-20");
        }
        try (PDDocument document = written(rove.sheet())) {
            assertTrue(document.getNumberOfPages() > 2);
            StringBuilder all = new StringBuilder();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                all.append(words(document, page));
            }
            for (int team = 1; team <= 30; team++) {
                assertTrue(all.toString().contains("Team " + team), "team " + team);
            }
        }
    }

    /** On paper of A4 across (ISO 216: 297 by 210 mm, 842 by 595 points), with more than a few lines on it. */
    @Test
    void thePageIsDrawn() throws IOException {
        rove.turn(rove.stop(1, "A", 64, -21, "10-13"), "Tern-1 (demo)", "10:30-11");
        try (PDDocument document = written(rove.sheet())) {
            assertEquals(842, document.getPage(0).getMediaBox().getWidth(), 0.5);
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 144);
            int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
            long dark = IntStream.of(pixels).filter(rgb -> (rgb & 0xFF) < 128 && (rgb >> 8 & 0xFF) < 128).count();
            assertTrue(dark > pixels.length / 500, dark + " of " + pixels.length + " pixels are dark");
        }
    }

    @Test
    void lettersOfOtherScriptsArePrintedAndThoseThatTheFontLacksAreMarked() throws IOException {
        rove.stop(1, "Камень 鳥", 64, -21, "10-18");
        try (PDDocument document = written(rove.sheet())) {
            assertTrue(words(document, 1).contains("Камень ?"), words(document, 1));
        }
    }

    @Test
    void aFailureLeavesTheFileAsItWas() throws IOException {
        Path file = Files.createDirectories(folder.resolve("sheet.pdf"));
        Files.writeString(file.resolve("inside"), "kept");
        assertThrows(IOException.class, () -> PdfSheet.write(rove.sheet(), file));
        assertEquals("kept", Files.readString(file.resolve("inside")));
        assertArrayEquals(new String[] {"sheet.pdf"}, folder.toFile().list());
    }
}
