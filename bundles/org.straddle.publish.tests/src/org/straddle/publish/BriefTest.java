package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.model.Identified;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Turn;
import org.straddle.model.Verdict;
import org.straddle.outlook.Road;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Pass;
import org.straddle.sky.prediction.PassError;

class BriefTest {

    private static final Pattern TURN = Pattern.compile(
            "TURN (.+), linear, inverted\\n +UTC +(\\S+) to (\\S+)\\n +local +(\\S+) to (\\S+)\\n"
                    + " +pass UTC +AOS (\\S+) az (\\d{3})°, TCA (\\S+) az (\\d{3})° el (\\d+)°, LOS (\\S+) az (\\d{3})°");

    private final Sketch sketch = new Sketch();

    /** The first whole pass over a site on 20 June 2031 that peaks above 20°. */
    private Pass pass() {
        return sketch.outlook().passes(sketch.corner, sketch.bird).stream().map(p -> p.pass())
                .filter(p -> p.isWhole() && p.peakElevationDeg() > 20).findFirst().orElseThrow();
    }

    private Turn turnThrough(Pass pass) {
        Stop stop = sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T19:00");
        Turn turn = sketch.turn(stop, "20T00:00", "20T00:01");
        turn.setStart(pass.aos().truncatedTo(ChronoUnit.SECONDS).plusSeconds(1));
        turn.setEnd(pass.los().truncatedTo(ChronoUnit.SECONDS));
        return turn;
    }

    @Test
    void turnsReadBackAsPlannedAndAsTheSkyHasThem() {
        Pass pass = pass();
        Turn turn = turnThrough(pass);
        Matcher text = TURN.matcher(sketch.sheet("brief-team-1.txt"));
        assertTrue(text.find());
        double stepS = Math.max(1, Math.ceil(PassError.of(pass).timeErrorS()) * 5);
        assertEquals("Tern-1 (demo)", text.group(1));
        assertNear(turn.getStart(), text.group(2), stepS);
        assertNear(turn.getEnd(), text.group(3), stepS);
        assertNear(pass.aos(), text.group(6), stepS);
        assertNear(pass.tca(), text.group(8), stepS);
        assertNear(pass.los(), text.group(11), stepS);
        assertEquals(pass.aosAzimuthDeg(), Double.parseDouble(text.group(7)), 0.5);
        assertEquals(pass.tcaAzimuthDeg(), Double.parseDouble(text.group(9)), 0.5);
        assertEquals(pass.losAzimuthDeg(), Double.parseDouble(text.group(12)), 0.5);
        assertEquals(pass.peakElevationDeg(), Double.parseDouble(text.group(10)), 0.5);
    }

    private static void assertNear(Instant expected, String time, double toleranceS) {
        Instant printed = Instant.parse("2031-06-20T" + time + "Z");
        assertTrue(Duration.between(expected, printed).abs().toMillis() <= 1000 * toleranceS, expected + " " + time);
    }

    @Test
    void thePageSaysTheSameTimesAsTheText() throws Exception {
        turnThrough(pass());
        Publication both = sketch.publication();
        Matcher text = TURN.matcher(Sketch.sheet(both, "brief-team-1.txt"));
        assertTrue(text.find());
        String cells = new StrictPage(Sketch.sheet(both, "brief-team-1.html")).text("td");
        for (int group : new int[] {6, 8, 11}) {
            assertTrue(cells.contains(text.group(group)), text.group(group));
        }
        assertTrue(cells.contains(text.group(2) + "–" + text.group(3)));
    }

    @Test
    void aTimeIsPrintedNoFinerThanAnOldElementSetKnowsIt() {
        sketch.bird.getElementSets().get(0).setEpoch(Instant.parse("2031-04-20T00:00:00Z"));
        Pass pass = pass();
        assertTrue(PassError.of(pass).timeErrorS() > 20, "two months old");
        turnThrough(pass);
        Matcher text = TURN.matcher(sketch.sheet("brief-team-1.txt"));
        assertTrue(text.find());
        assertTrue(text.group(6).matches("\\d\\d:\\d\\d(:[03]0)?"), text.group(6));
    }

    @Test
    void theDayRunsFromBaseToBase() {
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        sketch.stop(sketch.first, sketch.line, "20T15:00", "20T16:30");
        Outlook outlook = sketch.outlook();
        Road out = outlook.road(outlook.position(sketch.base), outlook.position(sketch.corner));
        Road on = outlook.road(outlook.position(sketch.corner), outlook.position(sketch.line));
        String text = sketch.sheet("brief-team-1.txt");
        assertInOrder(text, "FRIDAY 20 JUNE 2031", "Start: Selfoss, not before 07:00 UTC, 07:00 local",
                "DRIVE Selfoss to Knot Corner: about " + Math.round(out.roadKm()) + " km, " + minutes(out)
                        + " min. Leave by " + at("20T09:00", out),
                "STOP Knot Corner: corner, HP93 + HP94 + IP03 + IP04", "Mark at 64.00000, -20.00000",
                "arrive 09:00, ready at 09:15, pack up from 10:50, leave 11:00",
                "DRIVE Knot Corner to Plover Line: about " + Math.round(on.roadKm()) + " km, " + minutes(on)
                        + " min with 15 min of breaks",
                "STOP Plover Line: line, HP84 + HP94", "DRIVE Plover Line to Selfoss", "End: Selfoss, by 20:00 UTC",
                "SATURDAY 21 JUNE 2031", "No stop is planned on this day.");
    }

    private static long minutes(Road road) {
        return Math.round(road.total().toSeconds() / 60.0);
    }

    /** Four of five drives take less than 0.8416 deviations (table of the normal distribution) of 15 % more than usual. */
    private static String at(String arrival, Road road) {
        long moreS = (long) Math.ceil(road.driving().toSeconds() * 0.15 * 0.8416);
        return Sketch.june(arrival).minus(road.total()).minusSeconds(moreS).plusSeconds(30).truncatedTo(ChronoUnit.MINUTES).toString()
                .substring(11, 16);
    }

    private static void assertInOrder(String text, String... parts) {
        int from = 0;
        for (String part : parts) {
            int at = text.indexOf(part, from);
            assertTrue(at >= 0, "after the part before, not found: " + part + "\n" + text);
            from = at + part.length();
        }
    }

    @Test
    void aDriveThatSomebodyKnowsIsToldWithWhereItIsKnownFrom() {
        EnteredDrive known = StraddleFactory.eINSTANCE.createEnteredDrive();
        known.setFrom(sketch.corner);
        known.setTo(sketch.base);
        known.setMinutes(47);
        known.setRoadKm(51);
        known.setOrigin("driven in May");
        sketch.event.getEnteredDrives().add(known);
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        assertInOrder(sketch.sheet("brief-team-1.txt"), "Selfoss to Knot Corner: about 51 km, 47 min (driven in May). Leave by 08:10",
                "Knot Corner to Selfoss: about 51 km, 47 min (driven in May); there about 11:47 UTC");
    }

    @Test
    void twoStopsInARowAtOneSiteNeedNoDrive() {
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        sketch.stop(sketch.first, sketch.corner, "20T11:20", "20T12:00");
        assertEquals(2, count(sketch.sheet("brief-team-1.txt"), "DRIVE "), "there and back");
    }

    @Test
    void aDriveThatCannotBeDoneIsMarked() {
        sketch.stop(sketch.first, sketch.corner, "20T07:05", "20T11:00");
        sketch.stop(sketch.first, sketch.line, "20T11:10", "20T19:55");
        String text = sketch.sheet("brief-team-1.txt");
        assertEquals(2, count(text, "longer than the plan allows"));
        assertEquals(1, count(text, "after the day's end"));
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void aStopAfterMidnightBelongsToTheDayThatBeganBefore() {
        Sketch late = new Sketch();
        late.first.getDays().get(0).setUntil(Sketch.june("21T02:00"));
        late.stop(late.first, late.line, "21T00:30", "21T01:15");
        assertInOrder(late.sheet("brief-team-1.txt"), "FRIDAY 20 JUNE 2031", "arrive 2031-06-21 00:30",
                "SATURDAY 21 JUNE 2031", "No stop is planned on this day.");
    }

    @Test
    void localTimesAreThoseOfTheEvent() {
        Sketch west = new Sketch("America/St_Johns");
        west.stop(west.first, west.corner, "20T12:00", "20T13:00");
        String text = west.sheet("brief-team-1.txt");
        // In June the island keeps UTC-2:30 (IANA time zone database).
        assertTrue(text.contains("  UTC    arrive 12:00,"), text);
        assertTrue(text.contains("  local  arrive 09:30,"), text);
    }

    @Test
    void aStopWithoutAValidReviewSaysSoPlainly() throws Exception {
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        assertTrue(sketch.sheet("brief-team-1.txt").contains("! No valid review of hazards for this day."));
        assertTrue(new StrictPage(sketch.sheet("brief-team-1.html")).text("p")
                .contains("No valid review of hazards for this day."));
        sketch.reviewed(sketch.corner).setVerdict(Verdict.DO_NOT_USE);
        assertTrue(sketch.sheet("brief-team-1.txt").contains("! No valid review of hazards for this day. Do not use"));
    }

    @Test
    void aReviewedStopTellsHazardsMeasuresAndCautions() {
        sketch.reviewed(sketch.corner);
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        String text = sketch.sheet("brief-team-1.txt");
        assertFalse(text.contains("No valid review"), text);
        assertInOrder(text, "Reviewed by Q0AAR on 2 Jun 2031", "- traffic, 12 m away: Blind bend. Vests on",
                "ISO 20471", "Local codes");
    }

    @Test
    void theAgreedDownlinkLeadsToItsUplink() {
        Turn turn = turnThrough(pass());
        assertTrue(sketch.sheet("brief-team-1.txt")
                .contains("up 435.110–435.150 MHz, tone 67.0 Hz; down 145.850–145.890 MHz"));
        turn.setDownlinkMhz(145.860);
        // Inverted: 10 kHz above the low end of one band is 10 kHz below the high end of the other.
        assertTrue(sketch.sheet("brief-team-1.txt").contains("up 435.140 MHz (for the agreed downlink)"));
        sketch.bird.getUplink().setInverted(false);
        assertTrue(sketch.sheet("brief-team-1.txt").contains("up 435.120 MHz (for the agreed downlink)"));
    }

    @Test
    void aTurnWithoutAPassSaysSo() {
        Stop stop = sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T19:00");
        Instant between = pass().los().plusSeconds(600);
        Turn turn = sketch.turn(stop, "20T00:00", "20T00:01");
        turn.setStart(between);
        turn.setEnd(between.plusSeconds(60));
        assertTrue(sketch.sheet("brief-team-1.txt").contains("! No pass above this site’s horizon at this time."));
    }

    @Test
    void namesItsOwnPeopleOnly() {
        String text = sketch.sheet("brief-team-1.txt");
        assertTrue(text.contains("Ida Invented, Q0AAR") && text.contains("+999 555 0101"));
        assertFalse(text.contains("Bo Invented") || text.contains("+999 555 0102"));
    }

    @Test
    void listsOpenFindingsThatTouchTheTeam() {
        Stop stop = sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        Finding own = finding("The stop is odd.", stop);
        Finding ofSite = finding("The site is odd.", sketch.corner);
        Finding others = finding("The other team is odd.", sketch.second);
        Finding othersThere = finding("The other stop is odd.",
                sketch.stop(sketch.second, sketch.corner, "20T12:00", "20T13:00"), sketch.corner);
        Finding settled = new Finding("odd", Severity.BLOCKER, Statement.words("This was accepted."), List.of(sketch.first),
                Optional.empty(), Optional.empty(), "", Optional.of(StraddleFactory.eINSTANCE.createAcceptance()));
        String text = sketch.sheet("brief-team-1.txt", own, ofSite, others, othersThere, settled);
        assertInOrder(text, "OPEN FINDINGS", "- warning: The stop is odd.", "- warning: The site is odd.");
        assertFalse(text.contains("The other ") || text.contains("This was accepted."));
    }

    private static Finding finding(String sentence, Identified... objects) {
        return new Finding("odd", Severity.WARNING, Statement.words(sentence), List.of(objects), Optional.empty(), Optional.empty(), "",
                Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"brief-team-1.html", "brief-team-1.txt", "announcement.html", "announcement.txt"})
    void theWordThatNobodyCanVouchForIsNeverPrinted(String file) {
        sketch.reviewed(sketch.corner);
        sketch.stop(sketch.first, sketch.line, "21T09:00", "21T11:00");
        turnThrough(pass());
        assertFalse(sketch.sheet(file).toLowerCase().contains("safe"));
    }

    @Test
    void anEmptyPlanGivesAClearPage() throws Exception {
        assertTrue(sketch.sheet("brief-team-1.txt").contains("! No stop is planned for this team."));
        assertTrue(new StrictPage(sketch.sheet("brief-team-1.html")).text("p")
                .contains("No stop is planned for this team."));
        sketch.first.getDays().clear();
        sketch.first.getOperators().clear();
        sketch.event.setPlan(null);
        String bare = new StrictPage(sketch.sheet("brief-team-1.html")).text("p");
        assertTrue(bare.contains("No operator is named for this team.") && bare.contains("No stop is planned"), bare);
    }

    @Test
    void halfAStopIsLeftToTheChecks() throws Exception {
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00").setSite(null);
        sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00").setArrival(null);
        Stop stop = sketch.stop(sketch.first, sketch.line, "20T12:00", "20T11:00");
        sketch.turn(stop, "20T11:00", "20T10:00");
        sketch.turn(stop, "20T11:00", "20T11:10").setBird(null);
        String text = sketch.sheet("brief-team-1.txt");
        assertEquals(1, count(text, "\nSTOP "));
        assertTrue(text.contains("No turn is planned at this stop."));
        new StrictPage(sketch.sheet("brief-team-1.html"));
    }

    @Test
    void aStopOnADayThatTheTeamDoesNotHaveIsShown() {
        sketch.first.getDays().remove(1);
        sketch.stop(sketch.first, sketch.line, "21T09:00", "21T11:00");
        assertInOrder(sketch.sheet("brief-team-1.txt"), "SATURDAY 21 JUNE 2031", "The team has no hours on this day",
                "STOP Plover Line");
        assertEquals(LocalDate.parse("2031-06-21"), sketch.event.getLastDay());
    }
}
