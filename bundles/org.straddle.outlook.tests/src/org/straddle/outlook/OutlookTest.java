package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.OperatingPeriod;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.StraddleFactory;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;
import org.straddle.sky.prediction.Ephemeris;
import org.straddle.sky.prediction.PassSearch;

class OutlookTest {

    private static final Window DAY = new Window(World.MORNING, World.EVENING);

    @Test
    void spansFromTheFirstTeamsLeavingToTheLastsReturn() {
        World world = new World();
        world.day(Instant.parse("2031-06-20T07:00:00Z"), Instant.parse("2031-06-20T09:00:00Z"));
        world.day(Instant.parse("2031-06-25T07:00:00Z"), Instant.parse("2031-06-25T06:00:00Z"));
        assertEquals("2031-06-20T07:00:00Z/2031-06-21T22:00:00Z", world.outlook().span().toString());
    }

    /** Oslo is two hours ahead of UTC in June. */
    @Test
    void spansTheLocalDaysOfTheEventWithoutTeamDays() {
        Event event = Fresh.event("Days");
        event.setZone("Europe/Oslo");
        event.setFirstDay(LocalDate.of(2031, 6, 21));
        event.setLastDay(LocalDate.of(2031, 6, 22));
        assertEquals("2031-06-20T22:00:00Z/2031-06-22T22:00:00Z", Outlook.of(event, null).span().toString());
        event.setLastDay(null);
        assertEquals(Duration.ofDays(1), Outlook.of(event, null).span().duration());
    }

    @Test
    void anEventWithoutDaysHasNoPassesAndSaysSo() {
        World world = new World();
        world.event.getTeams().clear();
        Site site = world.site(64, -21, "HP94");
        Bird bird = world.bird("Auk (demo)", World.low(World.MORNING, 0));
        Outlook outlook = world.outlook();
        assertFalse(outlook.hasSpan());
        assertEquals(List.of(), outlook.passes());
        assertEquals(List.of(), outlook.sharedFootprint(bird, DAY, site, site));
        assertEquals(List.of(Trouble.Kind.DAYS), outlook.troubles().stream().map(Trouble::kind).toList());
    }

    /** The same passes as sky finds when it is asked directly. */
    @Test
    void findsThePassesOfEveryBirdOverEverySite() {
        World world = new World();
        Site open = world.site(64, -21, "HP94");
        Site walled = world.site(64, -21, "HP94");
        World.mask(walled, 0, 20);
        Bird bird = world.bird("Auk (demo)", World.low(World.MORNING, 0));
        Outlook outlook = world.outlook();

        Ephemeris ephemeris = Ephemeris.of(outlook.elementSet(bird, World.MORNING).orElseThrow(), DAY, null);
        assertEquals(ephemeris.passes(outlook.place(walled), outlook.horizon(walled)),
                outlook.passes(walled, bird).stream().map(SitePass::pass).toList());
        assertTrue(outlook.passes(open).size() > outlook.passes(walled).size());
        assertEquals(outlook.passes(open).size() + outlook.passes(walled).size(), outlook.passes().size());
        assertEquals(outlook.passes().stream().map(p -> p.pass().aos()).sorted().toList(),
                outlook.passes().stream().map(p -> p.pass().aos()).toList());

        Window high = outlook.passes(walled, bird).get(0).pass().window();
        assertTrue(outlook.above(bird, walled, high));
        assertFalse(outlook.above(bird, walled, new Window(high.start().minusSeconds(1), high.end())));
        assertTrue(outlook.above(bird, open, new Window(high.start().minusSeconds(1), high.end())));
    }

    /** Over level, raised and jagged masks, with birds of one set, of two, of one that falls, of none; of all sites and of some. */
    @Test
    void aWalkFindsTheSamePassesInTheSameOrderAndTellsTheSameTroubles() {
        World world = new World();
        world.day(World.MORNING, World.EVENING.plus(Duration.ofDays(3)));
        for (int i = 0; i < 6; i++) {
            Site site = world.site(-60 + 24 * i, -150 + 55 * i, "");
            for (int corner = 0; corner < 5 * (i % 3); corner++) {
                World.mask(site, corner * 20 + i, corner * 7 % 20);
            }
        }
        world.site(91, 0, "");
        world.bird("one", World.low(World.MORNING, 0));
        world.bird("twin", World.low(World.MORNING, 0));
        world.bird("two", World.low(World.MORNING, 30), World.low(World.MORNING.plus(Duration.ofDays(2)), 31));
        BirdElements inTheGround = World.low(World.MORNING, 0);
        inTheGround.setEccentricity(0.5);
        world.bird("fallen", inTheGround, World.low(World.MORNING.plus(Duration.ofDays(1)), 90));
        world.bird("none");
        Outlook listed = world.outlook();
        Outlook walked = Outlook.toWalk(world.event, new PassSearch(), null);

        assertEquals(listed.troubles(), walked.troubles());
        assertTrue(listed.passes().size() > 300, () -> listed.passes().size() + " passes");
        assertEquals(listed.passes(), walked.passesInOrder(site -> true, bird -> true).toList());
        Site third = world.event.getSites().get(2);
        Bird two = world.event.getBirds().get(2);
        assertEquals(listed.passes(third, two), walked.passesInOrder(site -> site == third, bird -> bird == two).toList());
        assertEquals(listed.passes(), listed.passesInOrder(site -> true, bird -> true).toList());
        assertEquals(listed.passes(third), walked.passes(third), "lists are there for whoever asks after all");
        assertEquals(listed.troubles(), walked.troubles());
    }

    @Test
    void aChangedMaskTouchesOnlyItsSite() {
        World world = new World();
        Site changed = world.site(64, -21, "HP94");
        world.site(65, -19, "IP05");
        world.bird("Auk (demo)", World.low(World.MORNING, 33));
        Outlook before = world.outlook();
        World.mask(changed, 0, 7);
        Event copy = Snapshot.of(world.event);
        Outlook after = Outlook.of(copy, null);

        assertNotEquals(passes(before, 0), passes(after, 0));
        assertEquals(passes(before, 1), passes(after, 1));
        Pass any = passes(before, 1).get(0);
        assertSame(before.ephemeris(any), after.ephemeris(any), "remembered, not found again");
    }

    private static List<Pass> passes(Outlook outlook, int site) {
        return outlook.passes(outlook.event().getSites().get(site)).stream().map(SitePass::pass).toList();
    }

    /**
     * Two sets that disagree by a minute or so along the track: each pass belongs to the nearer set, and
     * none is lost and none comes twice, wherever in a pass the change of the nearer set falls.
     */
    @Test
    void theNearestElementSetPredictsAndNoPassIsLostAtTheChange() {
        World first = new World();
        BirdElements early = World.low(World.MORNING.minus(Duration.ofHours(5)), 0);
        Bird alone = first.bird("alone", early);
        Site only = first.site(64, -21, "HP94");
        List<SitePass> expected = first.outlook().passes(only, alone);
        Pass change = expected.get(2).pass();
        for (Instant edge : List.of(change.aos(), change.tca(), change.los())) {
            for (int seconds = -120; seconds <= 120; seconds += 10) {
                Instant middle = edge.plusSeconds(seconds);
                Duration apart = Duration.between(early.getEpoch(), middle).multipliedBy(2);
                BirdElements late = World.low(early.getEpoch().plus(apart),
                        turned(14.6 * 360 * apart.toSeconds() / 86_400.0));
                World world = new World();
                Site site = world.site(64, -21, "HP94");
                Bird both = world.bird("both", EcoreUtil.copy(early), late);
                Outlook outlook = world.outlook();

                assertEquals(early.getEpoch(), outlook.elementSet(both, middle.minusSeconds(1)).orElseThrow().epoch());
                assertEquals(late.getEpoch(), outlook.elementSet(both, middle.plusSeconds(1)).orElseThrow().epoch());
                List<Pass> passes = outlook.passes(site, both).stream().map(SitePass::pass).toList();
                assertEquals(expected.size(), passes.size(), "change at " + middle);
                for (int i = 0; i < passes.size(); i++) {
                    assertTrue(i == 0 || passes.get(i - 1).los().isBefore(passes.get(i).aos()));
                    if (i != 2) {
                        assertEquals(i < 2 ? early.getEpoch() : late.getEpoch(), passes.get(i).elements().epoch());
                    }
                }
            }
        }
    }

    private static double turned(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }

    @Test
    void whatCannotBeComputedIsToldAndLeftOut() {
        World world = new World();
        Site lost = world.site(91, 0, "XX00 HP94 hp94");
        Site found = world.site(64, -21, "HP94");
        BirdElements inTheGround = World.low(World.MORNING, 0);
        inTheGround.setEccentricity(0.5);
        Bird fallen = world.bird("Fallen", inTheGround);
        Bird bare = world.bird("Bare");
        Bird broken = world.bird("Broken", StraddleFactory.eINSTANCE.createBirdElements());
        BirdElements useless = World.low(World.MORNING, 0);
        useless.setEccentricity(0.5);
        Bird saved = world.bird("Saved", useless, World.low(World.MORNING.minus(Duration.ofDays(3)), 0));
        world.event.setZone("Nowhere");
        Outlook outlook = world.outlook();

        assertEquals(List.of("TIME_ZONE", "POSITION", "ELEMENTS_MISSING", "ELEMENTS_UNUSABLE", "ELEMENTS_UNUSABLE",
                "ELEMENTS_UNUSABLE"), outlook.troubles().stream().map(t -> t.kind().name()).sorted(
                        (a, b) -> Trouble.Kind.valueOf(a).compareTo(Trouble.Kind.valueOf(b))).toList());
        assertEquals(List.of(), outlook.passes(lost));
        assertThrows(IllegalArgumentException.class, () -> outlook.position(lost));
        for (Bird none : List.of(fallen, bare, broken)) {
            assertTrue(outlook.elementSet(none, World.MORNING).isEmpty(), none.getName());
            assertEquals(List.of(), outlook.passes(found, none));
        }
        assertFalse(outlook.passes(found, saved).isEmpty(), "the next nearest set takes the place of a useless one");
        assertEquals("[HP94]", outlook.squares(lost).toString());
    }

    @Test
    void aHorizonKeepsTheHigherOfTwoPointsAndLeavesOutWhatCannotBe() {
        World world = new World();
        Site site = world.site(64, -21, "HP94");
        World.mask(site, 0, 5);
        World.mask(site, 360, 9);
        World.mask(site, 90, 3);
        World.mask(site, 90, 95);
        World.mask(site, Double.NaN, 5);
        Outlook outlook = world.outlook();
        assertEquals("0:9 90:3", outlook.horizon(site).toString());
        assertEquals(2, outlook.troubles().size());
        assertEquals("0:0", outlook.horizon(world.site(64, -20.5, "")).toString());
    }

    @Test
    void footprintIsSharedWhileBothSitesHaveTheBirdAboveTheLevelHorizon() {
        World world = new World();
        Site a = world.site(64, -21, "HP94");
        Site b = world.site(48, 2, "JN18");
        World.mask(a, 0, 25);
        Site otherSide = world.site(-64, 159, "");
        Bird bird = world.bird("Auk (demo)", World.low(World.MORNING, 0));
        Outlook outlook = world.outlook();

        Ephemeris ephemeris = outlook.ephemeris(bird, World.MORNING).orElseThrow();
        List<Window> expected = ephemeris.commonVisibility(outlook.place(a), outlook.place(b), DAY, 0);
        assertFalse(expected.isEmpty());
        assertEquals(expected, outlook.sharedFootprint(bird, DAY, a, b));
        assertEquals(List.of(), outlook.sharedFootprint(bird, DAY, a, otherSide));
        Window part = new Window(expected.get(0).start().plusSeconds(60), expected.get(0).start().plusSeconds(61));
        assertEquals(List.of(part), outlook.sharedFootprint(bird, part, b, a));
    }

    @Test
    void aBirdIsWorkableWhenItsStateCalendarAndLightAllow() {
        World world = new World();
        BirdElements throughTheShadow = World.low(World.MORNING, 0);
        throughTheShadow.setRaanDeg(90);
        Bird bird = world.bird("Auk (demo)", throughTheShadow);
        assertEquals(List.of(DAY), world.outlook().workable(bird, DAY));

        bird.getCalendar().add(period("2031-06-21T08:00:00Z", "2031-06-21T09:00:00Z"));
        bird.getCalendar().add(period("2031-06-21T09:00:00Z", "2031-06-21T10:00:00Z"));
        bird.getCalendar().add(period("2031-06-21T21:00:00Z", null));
        bird.getCalendar().add(period("2031-06-21T12:00:00Z", "2031-06-21T11:00:00Z"));
        assertEquals(List.of(Window.parse("2031-06-21T08:00:00Z/PT2H"), Window.parse("2031-06-21T21:00:00Z/PT1H")),
                world.outlook().workable(bird, DAY));

        bird.setLitOnly(true);
        Outlook outlook = world.outlook();
        List<Window> lit = outlook.ephemeris(bird, World.MORNING).orElseThrow().sunlit(DAY);
        assertTrue(lit.size() > 3, "it goes through the shadow on every orbit");
        assertEquals(Windows.common(lit, outlook.switchedOn(bird, DAY)), outlook.workable(bird, DAY));

        bird.setState(BirdState.NOT_WORKING);
        assertEquals(List.of(), world.outlook().workable(bird, DAY));
    }

    private static OperatingPeriod period(String from, String until) {
        OperatingPeriod period = StraddleFactory.eINSTANCE.createOperatingPeriod();
        period.setFrom(Instant.parse(from));
        period.setUntil(until == null ? null : Instant.parse(until));
        return period;
    }

    /** Wellington to Salamanca, 19 959 679.267 m: the example of the GeographicLib documentation (from memory). */
    @Test
    void aDriveFollowsTheEllipsoid() {
        World world = new World();
        world.event.getPolicies().setDetourFactor(1);
        Road road = world.outlook().road(new GeoPosition(-41.32, 174.81), new GeoPosition(40.96, -5.50));
        assertEquals(19959.679267, road.roadKm(), 1e-5);
    }

    /** The speed is set so that the drive takes as long as wanted. */
    @ParameterizedTest
    @CsvSource({"60, 0", "120, 0", "120.5, 1", "240, 1", "240.5, 2", "0, 0"})
    void aBreakFollowsEveryFullStretchOfDrivingThatGoesOn(double minutes, int breaks) {
        World world = new World();
        GeoPosition from = new GeoPosition(42, -72);
        GeoPosition to = minutes == 0 ? from : new GeoPosition(43, -72);
        double roadKm = world.outlook().road(from, to).roadKm();
        world.event.getPolicies().setRoadSpeedKmh(minutes == 0 ? 60 : roadKm / minutes * 60);
        Road road = world.outlook().road(from, to);
        assertEquals(Duration.ofSeconds(Math.round(minutes * 60)), road.driving());
        assertEquals(Duration.ofMinutes(15L * breaks), road.breaks());
        assertEquals(road.driving().plus(road.breaks()), road.total());
    }

    /** The project's reference values for R95 and margin, the smaller of independent and common error. */
    @ParameterizedTest
    @CsvSource({"5, 3, 0.8581", "8, 1, 0.2404", "8, 5, 0.8739"})
    void presenceOnALineTakesHalfTheStationAsMargin(double r95M, double marginM, double expected) {
        World world = new World();
        world.event.getPolicies().setStationSpanM(2 * marginM);
        Site line = world.site(64.5, -20, "HP94 IP04");
        line.setMarkErrorM(r95M);
        assertEquals(expected, world.outlook().presence(line).orElseThrow().least(), 5e-5);
    }

    @Test
    void presenceOnACornerTakesTheDiagonal() {
        World world = new World();
        world.event.getPolicies().setStationSpanM(6 * 2 * Math.sqrt(2) / 2);
        Site corner = world.site(64, -20, "HP93 HP94 IP03 IP04");
        corner.setMarkErrorM(5);
        // Half the side is 3 m: the line's value for each of both lines, from one measurement.
        assertEquals(0.8581 * 0.8581, world.outlook().presence(corner).orElseThrow().common(), 1e-4);
    }

    /**
     * 8 m on a margin of 5 m is 87.4 %. By the normal table 95 % asks for a margin of 1.960 σ: a span of 12.9 m, or an
     * R95 of 6.24 m. Alone that is the mean of (8/6.24)² = 1.6 fixes; with 3 m in common of (64 − 9)/(38.9 − 9) = 1.8.
     */
    @Test
    void aDoubtfulPresenceSaysWhatLiftsIt() {
        World world = new World();
        world.event.getPolicies().setStationSpanM(10);
        world.event.getPolicies().setLeastPresence(0.95);
        Site line = world.site(64.5, -20, "HP94 IP04");
        line.setMarkErrorM(8);
        PresenceArgument argument = world.outlook().argument(line).orElseThrow();
        assertEquals(12.81, argument.spanNeededM().orElseThrow(), 0.02);
        assertEquals(6.24, argument.errorNeededM().orElseThrow(), 0.01);
        assertEquals(2, argument.fixesNeeded(0).orElseThrow());
        assertEquals("To lift it to 95.0 %: a span of 12.9 m instead of 10 m, or a mark good to 6.2 m instead of 8 m. The mean of"
                + " 2 such fixes is that good if their errors are independent; of 2 if 3 m of the error are common to all"
                + " (common practice, no source).", argument.whatLifts());
        assertTrue(argument.words().contains("The lower counts, 87.3 %"), argument.words());
    }

    @Test
    void whatAveragingCannotLiftIsSaid() {
        World world = new World();
        world.event.getPolicies().setStationSpanM(4);
        Site line = world.site(64.5, -20, "HP94 IP04");
        line.setMarkErrorM(8);
        String lifts = world.outlook().argument(line).orElseThrow().whatLifts();
        assertTrue(lifts.contains("if 3 m of the error are common to all, no number of fixes is"), lifts);
        line.setMarkErrorM(0.5);
        assertEquals("", world.outlook().argument(line).orElseThrow().whatLifts());
        line.setLongitudeDeg(-20.001);
        line.setMarkErrorM(8);
        assertTrue(world.outlook().argument(line).orElseThrow().whatLifts().contains("a span of "));
    }

    @ParameterizedTest
    @CsvSource({"64.5, -20, HP94 IP05", "64.5, -20, HP94 HP93", "64.5, -20, HP94 HP95 IP04", "64.5, -20.5, IP04",
        "95, -20, HP94", "65.5, -20, HP94 IP04"})
    void aClaimThatDoesNotMeetAtTheMarkHasNoPresence(double latitudeDeg, double longitudeDeg, String squares) {
        World world = new World();
        Site site = world.site(latitudeDeg, longitudeDeg, squares);
        assertTrue(world.outlook().presence(site).isEmpty());
    }

    @Test
    void demandCountsEverySquareUntilSomebodyListsOne() {
        World world = new World();
        assertEquals(1, world.outlook().demand(Square.parse("HP94")));
        demand(world, "hp94", 40);
        demand(world, "IP04", 140);
        demand(world, "no", 10);
        demand(world, null, 10);
        Outlook outlook = world.outlook();
        assertEquals(0.4, outlook.demand(Square.parse("HP94")));
        assertEquals(1, outlook.demand(Square.parse("IP04")));
        assertEquals(0, outlook.demand(Square.parse("IP05")));
        assertEquals(2, outlook.troubles().size());
    }

    private static void demand(World world, String square, double percent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square);
        demand.setSharePercent(percent);
        world.event.getDemands().add(demand);
    }

    /** Oslo at midsummer: sunrise 03:54 and sunset 22:44 local time (almanac, from memory). */
    @Test
    void daylightRunsFromSunriseToSunset() {
        Window day = Window.parse("2031-06-20T22:00:00Z/P1D");
        List<Window> daylight = new World().outlook().daylight(new GeoPosition(59.91, 10.75), day);
        assertEquals(1, daylight.size());
        Window almanac = Window.parse("2031-06-21T01:54:00Z/2031-06-21T20:44:00Z");
        assertEquals(0, Duration.between(almanac.start(), daylight.get(0).start()).toSeconds(), 180);
        assertEquals(0, Duration.between(almanac.end(), daylight.get(0).end()).toSeconds(), 180);
    }

    @Test
    void stopsWhenCancelled() {
        World world = new World();
        world.site(64, -21, "HP94");
        world.bird("Auk (demo)", World.low(World.MORNING, 77));
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> Outlook.of(world.event, monitor));
    }

    @Test
    void aSlipInAYearIsBounded() {
        World world = new World();
        world.day(Instant.parse("2131-06-21T06:00:00Z"), Instant.parse("2131-06-21T07:00:00Z"));
        assertEquals(EventSpan.LONGEST, world.outlook().span().duration());
        assertEquals(Trouble.Kind.DAYS, world.outlook().troubles().get(0).kind());
    }

    /** A set one day old, by the usual growth 1 km + 3 km a day at 7.5 km/s, and nothing known of the Earth's turning. */
    @Test
    void everyPassHasAnError() {
        World world = new World();
        Site site = world.site(64, -21, "HP94");
        Bird bird = world.bird("Auk (demo)", World.low(World.MORNING.minus(Duration.ofDays(1)), 33));
        Outlook outlook = world.outlook();
        for (SitePass pass : outlook.passes(site, bird)) {
            double error = outlook.error(pass.pass()).timeErrorS();
            double days = Duration.between(World.MORNING, pass.pass().tca()).toSeconds() / 86_400.0 + 1;
            assertEquals((1 + 3 * days) / 7.5 + 0.15, error, 0.02);
        }
        assertTrue(outlook.orientationNotice().orElseThrow().contains("0.1 s"));
    }
}
