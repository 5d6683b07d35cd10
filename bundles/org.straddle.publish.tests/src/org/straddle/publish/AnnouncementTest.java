package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;

class AnnouncementTest {

    private final Sketch sketch = new Sketch();

    @BeforeEach
    void plan() {
        Stop atLine = sketch.stop(sketch.second, sketch.line, "20T12:00", "20T14:00");
        sketch.turn(atLine, "20T12:40:20", "20T12:49:50").setDownlinkMhz(145.860);
        Stop atCorner = sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        sketch.turn(atCorner, "20T10:02:10", "20T10:14:40").setNote("Ida has the key, 64.00000, -20.00000");
    }

    @Test
    void theScheduleRunsInOrderOfTime() {
        assertTrue(sketch.sheet("announcement.txt").contains("""
                Friday 20 June 2031
                10:02 to 10:15 UTC | 10:02 to 10:15 local | HP93 + HP94 + IP03 + IP04 (corner) | Tern-1 (demo), linear, inverted | 145.850–145.890 MHz | team 1
                12:40 to 12:50 UTC | 12:40 to 12:50 local | HP84 + HP94 (line) | Tern-1 (demo), linear, inverted | 145.860 MHz (agreed) | team 2
                """), sketch.sheet("announcement.txt"));
    }

    /** The team needs an hour and more from its base: with an hour in hand it is there, without any it may be late. */
    @Test
    void theCoordinatorSeesHowLikelyEachTurnIsKeptAndChasersDoNot() {
        Stop hurried = sketch.stop(sketch.first, sketch.corner, "21T08:10", "21T10:00");
        sketch.turn(hurried, "21T08:26", "21T08:36");
        String sources = sketch.sheet("sources.txt");
        assertTrue(sources.contains("10:02 to 10:15 UTC | HP93 + HP94 + IP03 + IP04 | Knot Corner | Tern-1 (demo) | team 1 | kept: 99 % |"), sources);
        String late = sources.lines().filter(line -> line.startsWith("08:26")).findFirst().orElseThrow();
        assertTrue(late.matches(".*kept: [3-7][0-9] % \\(!\\).*"), late);
        assertTrue(sketch.sheet("sources.html").contains("Knot Corner"));
        assertEquals(Audience.PRIVATE, sketch.publication().sheets().stream()
                .filter(sheet -> sheet.fileName().equals("sources.txt")).findFirst().orElseThrow().audience());
        assertFalse(sketch.sheet("announcement.txt").contains("%"), "chances reach everybody");
        assertFalse(sketch.sheet("announcement.html").replaceAll("(?s)<style>.*?</style>", "").matches("(?s).*[0-9] ?%.*"),
                "chances reach everybody");
    }

    @Test
    void everySquareIsListedWithItsTurns() {
        assertTrue(sketch.sheet("announcement.txt").contains("""
                HP84
                  2031-06-20 12:40 to 12:50 | Tern-1 (demo) | team 2
                HP93
                  2031-06-20 10:02 to 10:15 | Tern-1 (demo) | team 1
                HP94
                  2031-06-20 10:02 to 10:15 | Tern-1 (demo) | team 1
                  2031-06-20 12:40 to 12:50 | Tern-1 (demo) | team 2
                IP03
                """), sketch.sheet("announcement.txt"));
    }

    @Test
    void thePageHoldsTheSameSchedule() throws Exception {
        StrictPage page = new StrictPage(sketch.sheet("announcement.html"));
        assertTrue(page.text("td").contains("10:02–10:15 10:02–10:15 Tern-1 (demo) 145.850–145.890 MHz, linear, inverted"),
                page.text("td"));
        assertTrue(page.text("th").contains("HP93 + HP94 + IP03 + IP04 (corner)"));
        assertEquals(3, page.elements("table").size(), "teams, one day, squares");
    }

    @ParameterizedTest
    @ValueSource(strings = {"announcement.html", "announcement.txt"})
    void nothingPersonalIsPublished(String file) {
        String sheet = sketch.sheet(file);
        assertTrue(sheet.contains("Q0AAR") && sheet.contains("Q1SKY/P"));
        for (String secret : List.of("Ida", "Invented", "Bo Inv", "Kin of", "+999", "555 01", "64.0", "-20.0", "63.9",
                "Knot Corner", "Plover Line", "Selfoss", "key")) {
            assertFalse(sheet.contains(secret), secret);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"announcement.html", "announcement.txt"})
    void saysWhatItIsAndThatItMayChange(String file) {
        String sheet = sketch.sheet(file);
        for (String part : List.of("Revision 1, 2031-06-19 18:00 UTC", "Subject to change", "We rove at midsummer.",
                "Listen for us.", "Friday 20 June 2031 to Saturday 21 June 2031", "Skerry Radio Circle")) {
            assertTrue(sheet.contains(part), part);
        }
    }

    @Test
    void anOpenBlockerMakesItADraft() {
        Finding open = new Finding("odd", Severity.BLOCKER, Statement.words("Ida is odd."), List.of(), Optional.empty(), Optional.empty(),
                "", Optional.empty());
        Finding accepted = new Finding("odd", Severity.BLOCKER, Statement.words("Odd."), List.of(), Optional.empty(), Optional.empty(),
                "", Optional.of(StraddleFactory.eINSTANCE.createAcceptance()));
        assertTrue(sketch.sheet("announcement.txt", open).contains("! Draft."));
        assertFalse(sketch.sheet("announcement.txt", open).contains("Ida is odd."));
        assertFalse(sketch.sheet("announcement.txt", accepted).contains("Draft."));
        assertFalse(sketch.sheet("announcement.txt").contains("Draft."));
    }

    @Test
    void anEmptyPlanGivesAClearPage() throws Exception {
        sketch.event.getPlan().getStops().clear();
        assertTrue(sketch.sheet("announcement.txt").contains("Nothing is scheduled yet."));
        StrictPage page = new StrictPage(sketch.sheet("announcement.html"));
        assertTrue(page.text("p").contains("Nothing is scheduled yet."));
        sketch.event.getTeams().clear();
        sketch.event.setFirstDay(null);
        new StrictPage(sketch.sheet("announcement.html"));
    }
}
