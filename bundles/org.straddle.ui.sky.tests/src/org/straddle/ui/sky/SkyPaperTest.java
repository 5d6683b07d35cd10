package org.straddle.ui.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.picture.PassPaper;
import org.straddle.ui.sky.picture.ReachPaper;
import org.straddle.ui.sky.reach.ReachSheet;
import org.straddle.ui.sky.reach.ReachWords;

class SkyPaperTest {

    private final Event event = DemoEvent.create();

    @Test
    void thePassIsOnePageWithMomentsAndFacts() throws IOException {
        event.getSites().forEach(site -> site.setName("<script>alert(\"x\")</script> & co"));
        Outlook outlook = Outlook.of(event, null);
        SitePass found = outlook.passes().get(0);
        PassSheet sheet = PassSheet.of(outlook, found).orElseThrow();
        byte[] file = SkyExport.pdf(new PassPaper(sheet));
        String text = text(file);
        assertTrue(text.contains("<script>alert(\"x\")</script> & co"), text);
        SheetWords words = new SheetWords(sheet);
        words.moments().forEach(row -> row.cells().forEach(cell -> assertTrue(text.contains(cell), cell)));
        words.facts().forEach(fact -> assertTrue(text.contains(fact.text().split(" ")[0]), fact.text()));
        assertFalse(new String(file, StandardCharsets.ISO_8859_1).contains("http"), "pages for the field must not need a network");
        assertEquals(1, pages(file));
    }

    @Test
    void theReachHasEveryPlaceInWords() throws IOException {
        Outlook outlook = Outlook.of(event, null);
        ReachSheet sheet = outlook.passes().stream().flatMap(pass -> ReachSheet.of(outlook, pass).stream()).findFirst().orElseThrow();
        byte[] file = SkyExport.pdf(new ReachPaper(sheet));
        String text = text(file);
        new ReachWords(sheet).rows().forEach(row -> assertTrue(text.contains(row.get(0).strip()), row.toString()));
        ReachWords.COLUMNS.forEach(column -> assertTrue(text.contains(column), column));
        assertTrue(pages(file) > 1);
    }

    private static int pages(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return document.getNumberOfPages();
        }
    }

    private static String text(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFTextStripper().getText(document);
        }
    }
}
