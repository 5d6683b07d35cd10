package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.straddle.model.Contact;
import org.straddle.model.ContactRole;
import org.straddle.model.Operator;
import org.straddle.model.OverheadLine;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.publish.site.SiteSheet;
import org.straddle.publish.site.SiteSheetHtml;
import org.straddle.publish.site.SiteSheetPdf;
import org.straddle.publish.site.SiteSheets;

/** One page for each team and stop, whatever stands on it. */
class SiteSheetsTest {

    private static final Pattern PROMISE = Pattern.compile("\\b(un)?safe(r|st|ly)?\\b", Pattern.CASE_INSENSITIVE);

    private final Sketch sketch = new Sketch();
    private final Team team = sketch.event.getTeams().get(0);
    private final Site site = sketch.event.getSites().get(0);

    @BeforeEach
    void aStopWithPapers() {
        sketch.reviewed(site);
        sketch.stop(team, site, "20T09:00", "20T12:00");
        OverheadLine wires = StraddleFactory.eINSTANCE.createOverheadLine();
        wires.setDistanceM(40);
        site.getVisits().get(0).getOverheadLines().add(wires);
        Contact help = StraddleFactory.eINSTANCE.createContact();
        help.setRole(ContactRole.EMERGENCY);
        help.setReach("112");
        sketch.event.getContacts().add(help);
    }

    private SiteSheet sheet() {
        return SiteSheets.of(sketch.outlook(), List.of(), null).get(0);
    }

    private static String text(SiteSheet sheet, SiteSheetPdf.Format format) throws IOException {
        try (PDDocument document = Loader.loadPDF(SiteSheetPdf.of(sheet, format))) {
            assertEquals(1, document.getNumberOfPages());
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource(SiteSheetPdf.Format.class)
    void onePageSaysWhatATeamNeeds(SiteSheetPdf.Format format) throws IOException {
        String page = text(sheet(), format);
        for (String needed : List.of("NOT CLEARED TO LEAVE", "Emergency: 112", "Blind bend", "Vests on", "class 3", "Nothing upright here",
                "Call on 20 Jun 2031 at 09:00", "without headphones", "These are usual cautions")) {
            assertTrue(page.contains(needed), needed + " not in " + page);
        }
        assertEquals(1, page.split("Nothing upright here is higher", -1).length - 1, "one figure");
    }

    @ParameterizedTest
    @EnumSource(SiteSheetPdf.Format.class)
    void muchTextStaysOnOnePageAndWhatDoesNotFitIsSaid(SiteSheetPdf.Format format) throws IOException {
        site.getVisits().get(0).setAccess("Over the hill and far away, then left. ".repeat(60));
        assertFalse(text(sheet(), format).contains("More than fits"));
        site.getVisits().get(0).setAccess("Over the hill and far away, then left. ".repeat(2000));
        assertTrue(text(sheet(), format).contains("More than fits here: read the brief."));
    }

    @Test
    void theSameSheetIsTheSameFile() throws IOException {
        assertArrayEquals(SiteSheetPdf.of(sheet(), SiteSheetPdf.Format.A4), SiteSheetPdf.of(sheet(), SiteSheetPdf.Format.A4));
    }

    @Test
    void whatPeopleTypedIsNoMarkup() {
        site.getVisits().get(0).setParking("<script>alert(1)</script> & \"more\"");
        String page = SiteSheetHtml.of(sheet());
        assertFalse(page.contains("<script"), page);
        assertTrue(page.contains("&lt;script&gt;"), page);
    }

    @Test
    void medicalNotesStandThereByConsentOnly() {
        Operator operator = team.getOperators().get(0);
        operator.setMedicalNote("penicillin");
        assertFalse(SiteSheetHtml.of(sheet()).contains("penicillin"));
        operator.setMedicalConsent(true);
        assertTrue(SiteSheetHtml.of(sheet()).contains("penicillin"));
    }

    @Test
    void noPageCallsAnythingSafe() {
        sketch.event.getSites().forEach(each -> sketch.stop(team, each, "20T13:00", "20T14:00"));
        for (SiteSheet page : SiteSheets.of(sketch.outlook(), List.of(), null)) {
            assertFalse(PROMISE.matcher(SiteSheetHtml.of(page)).find(), page.title());
        }
    }

    @Test
    void onlyForOneSite() {
        assertEquals(1, SiteSheets.of(sketch.outlook(), List.of(), site).size());
        assertEquals(0, SiteSheets.of(sketch.outlook(), List.of(), sketch.event.getSites().get(1)).size());
    }
}
