package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.kit.KitNotation.team;

import java.io.StringReader;
import java.time.Instant;
import java.time.ZoneId;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.straddle.model.KitItem;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class PackingSheetTest {

    private static final ZoneId ZONE = ZoneId.of("Europe/Paris");

    private static Team ticked(String kit, String by, String at) {
        Team team = team(kit);
        KitItem item = team.getKits().get(0).getItems().get(0);
        item.setTick(StraddleFactory.eINSTANCE.createTick());
        item.getTick().setBy(by);
        item.getTick().setAt(Instant.parse(at));
        return team;
    }

    private static String html(Team team) {
        return PackingSheet.html(PackingList.of(team), ZONE);
    }

    private static String text(Team team) {
        return PackingSheet.text(PackingList.of(team), ZONE);
    }

    @Test
    void textHasABoxANameAndATimeForEachItem() {
        Team team = ticked("radio rig fm 2kg; radio spare-rig x2 ->rig; tool rope 1kg", "Q0AAR", "2031-06-20T08:05:00Z");
        assertEquals("""
                Packing list: team 1, North

                radio
                [x] 1 × rig        Q0AAR 2031-06-20 10:05
                    for FM; 2 kg
                [ ] 2 × spare-rig  name ____________ time ______
                    spare for rig

                tool
                [ ] 1 × rope       name ____________ time ______
                    1 kg
                """, text(team).substring(0, text(team).indexOf("\n3 items")));
    }

    @Test
    void aTypedLineBreakDoesNotForgeARow() {
        Team team = team("radio rig");
        team.getKits().get(0).getItems().get(0).setName("rig\n[x] 1 × battery");
        assertEquals(1, text(team).lines().filter(line -> line.startsWith("[")).count());
    }

    /** The page is also well-formed XML but for its doctype and void elements, so a parser can count its cells. */
    @Test
    void htmlHasOneRowWithNineCellsForEachItem() throws Exception {
        Document page = parsed(html(ticked("radio rig; tool rope; power battery", "Q0AAR", "2031-06-20T08:05:00Z")));
        var rows = page.getElementsByTagName("tr");
        assertEquals(1 + 3, rows.getLength());
        for (int i = 0; i < rows.getLength(); i++) {
            assertEquals(9, rows.item(i).getChildNodes().getLength());
        }
        assertEquals("☑rig1radioevery modeQ0AAR2031-06-20 10:05", rows.item(1).getTextContent());
        assertEquals("en", page.getDocumentElement().getAttribute("lang"));
        assertEquals(1, page.getElementsByTagName("caption").getLength());
    }

    @Test
    void htmlEscapesWhatSomebodyTyped() throws Exception {
        Team team = ticked("radio rig", "<script>alert('1')</script>", "2031-06-20T08:05:00Z");
        KitItem item = team.getKits().get(0).getItems().get(0);
        item.setName("a<b>&\"c'");
        item.setNote("</td><img src=x>");
        team.setName("<North & South>");
        team.getKits().get(0).setName("<kit>");
        Document page = parsed(html(team));
        assertEquals(0, page.getElementsByTagName("script").getLength() + page.getElementsByTagName("img").getLength()
                + page.getElementsByTagName("b").getLength());
        assertTrue(page.getElementsByTagName("h1").item(0).getTextContent().endsWith("<North & South>"));
        assertTrue(page.getElementsByTagName("tr").item(1).getTextContent().contains("a<b>&\"c'"));
    }

    @Test
    void htmlNeedsNothingFromElsewhere() {
        assertFalse(html(team("radio rig")).matches("(?s).*(https?:|src=|url\\(|<link|<script).*"));
    }

    @Test
    void anEmptyListSaysSo() {
        assertTrue(text(team()).contains("This team takes no kit along."));
        assertTrue(html(team("")).contains("<p>This team takes no kit along.</p>"));
    }

    private static Document parsed(String html) throws Exception {
        String xml = html.replace("<!DOCTYPE html>", "").replaceAll("<(meta[^>]*|br)>", "<$1/>");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }
}
