package org.straddle.publish.packing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;

import javax.xml.parsers.DocumentBuilderFactory;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.kit.Packing;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.publish.site.SiteSheetPdf;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class PackingSheetTest {

    private static final String HOSTILE = "a<b>&\"c'</script><img src=x>\n[x] 1 × forged";

    private final Event event = Fresh.event("Midsummer", "Europe/Paris", LocalDate.parse("2031-06-20"), LocalDate.parse("2031-06-20"));
    private final Team team = Fresh.team();
    private final Kit kit = Fresh.kit();

    @BeforeEach
    void oneTeam() {
        team.setName("North");
        team.setNumber(1);
        team.getKits().add(kit);
        event.getTeams().add(team);
        event.getKits().add(kit);
    }

    private KitItem item(String name, String bag) {
        KitItem item = Fresh.kitItem(name, Role.TOOL);
        item.setBag(bag);
        item.setWeightKg(2);
        kit.getItems().add(item);
        return item;
    }

    private void stop() {
        Site site = Fresh.site();
        site.setName("Plover Line");
        site.setLatitudeDeg(50);
        event.getSites().add(site);
        Stop stop = Fresh.stop(team, site, Instant.parse("2031-06-20T10:00:00Z"), Instant.parse("2031-06-20T12:00:00Z"));
        event.getPlan().getStops().add(stop);
    }

    private PackingPage page() {
        Outlook outlook = Outlook.of(event, null);
        return PackingPage.of(Packing.of(team, outlook), outlook);
    }

    @Test
    void textHasABoxANameAndATimeForEachItemBagByBag() {
        KitItem rope = item("rope", null);
        rope.setTick(StraddleFactory.eINSTANCE.createTick());
        rope.getTick().setBy("Q0AAR");
        rope.getTick().setAt(Instant.parse("2031-06-20T08:05:00Z"));
        item("lamp", "day bag").setCount(2);
        stop();
        String text = PackingSheet.text(page());
        assertTrue(text.contains("""

                Bag: day bag. 4.0 kg
                [ ] 2 × lamp  name ____________ time ______
                    4 kg

                Not in a bag. 2.0 kg
                [x] 1 × rope  Q0AAR Fri 20 Jun 10:05
                    2 kg
                """), text);
        assertTrue(text.contains("[ ] Plover Line, Fri 20 Jun 14:00  name ____________ time ______"), text);
        assertTrue(text.contains("because: every team on the road needs one."), text);
    }

    @Test
    void pagesAreStrictAndWhatSomebodyTypedStaysWords() throws Exception {
        KitItem item = item(HOSTILE, HOSTILE);
        item.setNote(HOSTILE);
        item.setOwner(HOSTILE);
        item.setId("x\" onload=\"y");
        item.setTick(StraddleFactory.eINSTANCE.createTick());
        item.getTick().setBy(HOSTILE);
        team.setName(HOSTILE);
        event.setName(HOSTILE);
        stop();
        event.getSites().get(0).setName(HOSTILE);
        for (String html : new String[] {PackingSheet.html(page()), PackingSheet.phone(page())}) {
            Document page = parsed(html);
            assertEquals(0, page.getElementsByTagName("img").getLength() + page.getElementsByTagName("b").getLength());
            assertTrue(page.getElementsByTagName("h1").item(0).getTextContent().contains("a<b>&\"c'</script>"));
            assertFalse(html.contains("onload=\""), "an attribute of its own");
            assertFalse(html.matches("(?s).*(https?:|url\\(|<link|src=\").*"), "needs nothing from elsewhere");
        }
        assertEquals(0, parsed(PackingSheet.html(page())).getElementsByTagName("script").getLength());
        assertEquals(1, parsed(PackingSheet.phone(page())).getElementsByTagName("script").getLength());
        assertEquals(1, PackingSheet.text(page()).lines().filter(line -> line.startsWith("[x]")).count());
    }

    /** The script holds nothing of an event, so nothing that somebody wrote can reach it but through attributes. */
    @Test
    void theScriptIsTheSameForEveryList() throws Exception {
        String before = script();
        item("rope", "bag");
        stop();
        assertEquals(before, script());
    }

    private String script() throws Exception {
        return parsed(PackingSheet.phone(page())).getElementsByTagName("script").item(0).getTextContent();
    }

    @Test
    void phoneTicksWhatTheEventKnowsAndHasAKindForEachStop() throws Exception {
        KitItem rope = item("rope", null);
        rope.setChecked(StraddleFactory.eINSTANCE.createTick());
        rope.getChecked().setBy("Q0AAR");
        rope.getChecked().setAt(Instant.parse("2031-06-20T08:05:00Z"));
        rope.setSerial("secret 77");
        stop();
        String html = PackingSheet.phone(page());
        assertTrue(html.contains("data-checked-by=\"Q0AAR\" data-checked-at=\"2031-06-20T08:05:00Z\""), html);
        assertEquals(5, parsed(html).getElementsByTagName("option").getLength());
        assertFalse(html.contains("secret 77"), "nobody who packs needs the serial number");
    }

    /** A name that the script asks for in vain stops all of it, and with it every tick. */
    @Test
    void thePageHasEverythingThatItsScriptAsksFor() throws Exception {
        item("rope", "bag");
        stop();
        String html = PackingSheet.phone(page());
        String script = script();
        List<String> ids = names("getElementById\\('(\\w+)'\\)", script);
        List<String> words = names("document\\.body\\.dataset\\.(\\w+)", script);
        assertTrue(ids.contains("kind") && ids.contains("send") && words.contains("key") && words.contains("name"), script);
        ids.forEach(id -> assertEquals(1, names("id=\"(" + id + ")\"", html).size(), id));
        words.forEach(word -> assertEquals(1, names("<body[^>]* data-(" + word + ")=\"[^\"]", html).size(), word));
        assertTrue(html.indexOf("<script>") > html.indexOf("</footer>"), "when the script runs, all of it is there");
    }

    private static List<String> names(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
    }

    /** What a phone sent once is on the next page, and the page can give its ticks out as text and as a file. */
    @Test
    void phoneShowsWhatIsInTheCarAgain() throws Exception {
        KitItem rope = item("rope", null);
        stop();
        Stop stop = event.getPlan().getStops().get(0);
        stop.setId("s.9");
        rope.getInCar().add(StraddleFactory.eINSTANCE.createStopTick());
        rope.getInCar().get(0).setStop(stop);
        rope.getInCar().get(0).setBy("Q0AAR");
        rope.getInCar().get(0).setAt(Instant.parse("2031-06-20T11:50:00Z"));
        String html = PackingSheet.phone(page());
        assertTrue(html.contains("data-car-s-9-by=\"Q0AAR\" data-car-s-9-at=\"2031-06-20T11:50:00Z\""), html);
        assertTrue(html.contains("<option value=\"car-s-9\">"), html);
        assertTrue(html.contains("In the car again at Plover Line: 1 of 1, the last by Q0AAR. Nothing is missing."), html);
        assertTrue(html.contains("id=\"copy\"") && html.contains("-ticks.csv"), html);
    }

    @Test
    void anEmptyListSaysSo() {
        assertTrue(PackingSheet.text(page()).contains("This team takes no kit along."));
        assertTrue(PackingSheet.html(page()).contains("This team takes no kit along."));
    }

    @Test
    void pdfHasAllOfItOnTheChosenPaperAndIsTheSameEachTime() throws Exception {
        for (int i = 0; i < 120; i++) {
            item("thing number " + i, i % 2 == 0 ? "day bag" : "night bag").setNote("a note that is long enough to be worth a line of its own");
        }
        stop();
        for (SiteSheetPdf.Format format : SiteSheetPdf.Format.values()) {
            byte[] file = PackingPdf.of(page(), format);
            assertArrayEquals(file, PackingPdf.of(page(), format));
            try (PDDocument document = Loader.loadPDF(file)) {
                assertTrue(document.getNumberOfPages() > 2);
                PDRectangle paper = document.getPage(0).getMediaBox();
                assertEquals(format.paper().getWidth(), paper.getWidth(), 0.1f);
                String text = new PDFTextStripper().getText(document);
                for (int i = 0; i < 120; i++) {
                    assertTrue(text.contains("1 × thing number " + i), "thing " + i);
                }
                assertTrue(text.contains("Plover Line, Fri 20 Jun 14:00"));
                assertTrue(text.contains("page 2 of " + document.getNumberOfPages()));
            }
        }
    }

    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(
                html.replace("<!DOCTYPE html>", "").replaceFirst("(?s)<script>(.*)</script>", "<script><![CDATA[$1]]></script>"))));
    }
}
