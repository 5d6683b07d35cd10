package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.HazardKind;
import org.straddle.model.Site;
import org.straddle.publish.site.QuestionSheet;
import org.straddle.publish.site.SiteSheet;
import org.straddle.publish.site.SiteSheetHtml;
import org.straddle.publish.site.SiteSheetPdf;
import org.straddle.safety.guided.GuidedReview;
import org.straddle.safety.guided.HazardProposal;
import org.straddle.safety.guided.Question;

/** The questions for somebody with a pencil are those of the window, on one page. */
class QuestionSheetTest {

    private final Event event = new Sketch().outlook().event();
    private final Site site = event.getSites().get(0);
    private final GuidedReview review = GuidedReview.begin(site, LocalDate.parse("2031-06-20"), event.getPolicies(), List.of(
            new HazardProposal(HazardKind.HEAT, "Heat makes somebody ill", "the forecast is hot.", 0, true)));

    @Test
    void everyQuestionIsPrintedOnOnePageOfBothPapers() throws Exception {
        SiteSheet sheet = QuestionSheet.of(review);
        for (SiteSheetPdf.Format format : SiteSheetPdf.Format.values()) {
            try (var pdf = Loader.loadPDF(SiteSheetPdf.of(sheet, format))) {
                assertEquals(1, pdf.getNumberOfPages());
                String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
                for (Question question : review.questions()) {
                    assertTrue(text.contains(question.text()), question.text() + " is not on " + format);
                }
                assertTrue(text.contains("because the forecast is hot."), "a proposal says why");
            }
        }
    }

    @Test
    void thePageForABrowserHasThemToo() {
        String html = SiteSheetHtml.of(QuestionSheet.of(review));
        review.questions().forEach(question -> assertTrue(html.contains(question.text()), question.text()));
        assertTrue(html.contains("width=device-width"), "a telephone shows it in letters that can be read");
    }
}
