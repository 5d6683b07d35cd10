package org.straddle.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.NearbyBoundaries;
import org.straddle.grid.Square;
import org.straddle.grid.Standing;
import org.straddle.kit.team.Resilience;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.ReportKind;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.event.NeighbourhoodPlanner;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.store.EventFolder;

class DemoEventTest {

    private final Event event = DemoEvent.create();

    @Test
    void hasThreeTeamsOfEightOperatorsForThreeDays() {
        assertEquals(3, event.getTeams().size());
        assertEquals(8, event.getTeams().stream().flatMap(team -> team.getOperators().stream()).distinct().count());
        assertEquals(8, event.getOperators().size());
        event.getTeams().forEach(team -> assertEquals(3, team.getDays().size()));
        assertEquals(3, event.getTeams().stream().map(team -> team.getDays().get(0).getStart()).distinct().count());
    }

    /** So that a part of a name on the command line cannot mean two things. */
    @Test
    void noSiteOrTeamSharesAWordWithABird() {
        Set<String> birds = event.getBirds().stream().map(bird -> bird.getName().replaceAll("\\W.*", "").toLowerCase())
                .collect(Collectors.toSet());
        assertTrue(birds.contains("tern"), birds.toString());
        Set<String> others = Stream.concat(event.getSites().stream().map(Site::getName),
                event.getTeams().stream().map(Team::getName)).flatMap(name -> Stream.of(name.toLowerCase().split("\\W+")))
                .collect(Collectors.toSet());
        assertTrue(others.contains("causeway") && others.contains("lanterns"), others.toString());
        birds.forEach(bird -> assertTrue(others.stream().noneMatch(word -> word.startsWith(bird)), bird));
    }

    /** ITU Radio Regulations, article 5: 144-146 MHz, and 435-438 MHz by No. 5.282. */
    @Test
    void birdsStayWithinWhatTheAmateurSatelliteServiceHas() {
        event.getBirds().stream().flatMap(bird -> Stream.of(bird.getUplink(), bird.getDownlink())).forEach(link -> {
            double low = link.getLowMhz();
            double high = link.getHighMhz();
            assertTrue(low <= high && (low >= 144 && high <= 146 || low >= 435 && high <= 438), low + " to " + high);
        });
    }

    @Test
    void hasSitesOfEveryKind() {
        assertTrue(event.getSites().size() >= 14);
        assertTrue(count(SiteKind.LINE) >= 4);
        assertEquals(1, count(SiteKind.CORNER));
        assertTrue(count(SiteKind.INSIDE) >= 4);
        assertTrue(event.getSites().stream().anyMatch(site -> site.getKind() == SiteKind.LINE
                && site.getSquares().stream().map(square -> square.substring(0, 2)).distinct().count() == 2),
                "a line where two fields meet");
    }

    private long count(SiteKind kind) {
        return event.getSites().stream().filter(site -> site.getKind() == kind).count();
    }

    @Test
    void sitesClaimWhatTheirMarksSupport() {
        double spanM = event.getPolicies().getStationSpanM();
        for (Site site : event.getSites()) {
            Standing standing = Standing.of(mark(site), site.getMarkErrorM(), spanM);
            assertEquals(new TreeSet<>(standing.squares()),
                    site.getSquares().stream().map(Square::parse).collect(Collectors.toCollection(TreeSet::new)),
                    site.getName());
            assertEquals(standing.kind().name(), site.getKind().name(), site.getName());
        }
    }

    @Test
    void marksOnLinesAndTheCornerAreExact() {
        for (Site site : event.getSites()) {
            if (site.getKind() != SiteKind.INSIDE) {
                assertFalse(NearbyBoundaries.of(mark(site), 1).isEmpty(), site.getName());
            }
        }
        assertTrue(event.getSites().stream().anyMatch(site -> site.getKind() == SiteKind.LINE)
                && event.getSites().stream().anyMatch(site -> site.getKind() == SiteKind.CORNER));
    }

    /** Coast line: Natural Earth 1:10m, countries, main ring of Iceland (public domain), latitude and longitude. */
    @Test
    void sitesLieOnLand() throws IOException {
        List<double[]> coast;
        try (BufferedReader rows = new BufferedReader(new InputStreamReader(
                DemoEventTest.class.getResourceAsStream("iceland.csv"), StandardCharsets.US_ASCII))) {
            coast = rows.lines().map(row -> row.split(","))
                    .map(pair -> new double[] {Double.parseDouble(pair[0]), Double.parseDouble(pair[1])}).toList();
        }
        assertTrue(isInside(coast, 64.8, -18.5), "the middle of the island");
        assertFalse(isInside(coast, 63, -20), "the sea south of it");
        for (Site site : event.getSites()) {
            assertTrue(isInside(coast, site.getLatitudeDeg(), site.getLongitudeDeg()), site.getName());
        }
    }

    private static boolean isInside(List<double[]> ring, double latitude, double longitude) {
        boolean inside = false;
        for (int i = 1; i < ring.size(); i++) {
            double[] a = ring.get(i - 1);
            double[] b = ring.get(i);
            if (a[0] > latitude != b[0] > latitude
                    && longitude < (b[1] - a[1]) * (latitude - a[0]) / (b[0] - a[0]) + a[1]) {
                inside = !inside;
            }
        }
        return inside;
    }

    @Test
    void nothingCanBeTakenForReal() {
        event.getBirds().forEach(bird -> {
            assertTrue(bird.getName().endsWith("(demo)"), bird.getName());
            assertTrue(bird.getCatalogueNumber() >= 99001 && bird.getCatalogueNumber() <= 99006);
            bird.getElementSets().forEach(set -> assertEquals(bird.getName(), set.getName()));
        });
        event.getOperators().forEach(operator -> assertTrue(operator.getCallSign().startsWith("Q")));
    }

    @Test
    void birdsDiffer() {
        assertEquals(6, event.getBirds().size());
        assertEquals(1, event.getBirds().stream().filter(bird -> bird.isLitOnly()).count());
        assertEquals(1, event.getBirds().stream().filter(bird -> !bird.getCalendar().isEmpty()).count());
        assertEquals(1, event.getBirds().stream().filter(bird -> bird.getState() == BirdState.NOT_WORKING).count());
        assertTrue(event.getBirds().stream().anyMatch(bird -> !bird.getReports().isEmpty()
                && bird.getReports().stream().allMatch(report -> report.getKind() == ReportKind.HEARD)));
        event.getBirds().forEach(bird -> assertEquals(1, bird.getElementSets().size(), bird.getName()));
    }

    @Test
    void everySquareOfASiteIsInDemandAndSomeOthers() {
        Set<String> claimed = event.getSites().stream().flatMap(site -> site.getSquares().stream())
                .collect(Collectors.toSet());
        Set<String> wanted = event.getDemands().stream().map(demand -> demand.getSquare()).collect(Collectors.toSet());
        assertTrue(wanted.containsAll(claimed));
        assertTrue(wanted.size() >= claimed.size() + 3);
        event.getDemands().forEach(demand -> assertTrue(demand.getSharePercent() > 0 && demand.getSharePercent() <= 100));
    }

    /** Ids of rules are those of {@link Checks#standard()}; one that is renamed or lost fails here. */
    @Test
    void theDraftMakesEveryMistakeAPlanCan() {
        Set<String> expected = new TreeSet<>(Set.of("same-site", "same-square", "one-channel", "same-frequency",
                "stops-overlap", "stop-outside-day", "drive-too-long", "driving-limit", "turn-outside-stop",
                "turn-before-set-up", "turn-after-take-down", "turn-without-pass", "turn-below-mask",
                "turns-too-close", "turn-short", "peak-low", "bird-not-working", "bird-off", "bird-never-worked",
                "elements-too-old", "visit-missing", "visit-old", "permission-lapsed", "review-missing",
                "review-outdated", "review-signed-once", "site-refused", "review-conditions"));
        expected.removeAll(findings(event).stream().map(Finding::rule).collect(Collectors.toSet()));
        assertEquals(Set.of(), expected, "mistakes that no finding names");
    }

    @Test
    void reviewsAreSignedByTwoPeopleOfTheEventButForOne() {
        List<String> waiting = new java.util.ArrayList<>();
        for (Site site : event.getSites()) {
            ReviewState state = SafetyNotes.of(site, LocalDate.parse("2027-06-18")).state();
            assertFalse(state instanceof ReviewState.UnknownSigner, () -> site.getName() + ": " + state.sentence());
            if (state instanceof ReviewState.SignedOnce) {
                waiting.add(site.getName());
            }
        }
        assertEquals(List.of("Lichen Wall"), waiting);
    }

    @Test
    void oneKitHasNothingForItsAntenna() {
        assertEquals(List.of("East crossed beam"), event.getTeams().stream()
                .map(team -> Resilience.of(team, Itinerary.of(event)))
                .flatMap(kit -> kit.singlePoints().stream().filter(point -> point.stops().size() == kit.planned().size()))
                .map(point -> point.gear().name()).toList());
    }

    @Test
    void nothingInTheDraftIsPinned() {
        assertTrue(event.getPlan().getStops().size() > 10);
        for (Stop stop : event.getPlan().getStops()) {
            assertFalse(stop.isPinned());
            stop.getTurns().forEach(turn -> assertFalse(turn.isPinned()));
        }
    }

    @Test
    void aPlannerLeavesNoBlocker() {
        var proposal = new NeighbourhoodPlanner().propose(Outlook.of(event, null), PlanSettings.ofIterations(8, 1), null);
        assertTrue(proposal.worth() > 0);
        event.getPlan().getStops().clear();
        proposal.stops().forEach(stop -> event.getPlan().getStops().add(stop(stop)));
        assertEquals(List.of(), findings(event).stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).filter(finding -> !isAboutPapers(finding))
                .map(Finding::sentence).toList());
    }

    /** Reviews and visits follow a plan: a planner cannot settle them. */
    private static boolean isAboutPapers(Finding finding) {
        return CheckRule.PAPERS.contains(finding.rule());
    }

    private static Stop stop(PlannedStop planned) {
        Stop stop = Fresh.stop(planned.team(), planned.site(), planned.stay().start(), planned.stay().end());
        planned.turns().forEach(turn -> stop.getTurns().add(turn(turn)));
        return stop;
    }

    private static Turn turn(PlannedTurn planned) {
        return Fresh.turn(planned.bird(), planned.window().start(), planned.window().end());
    }

    @Test
    void isTheSameEachTime() {
        Event again = DemoEvent.create();
        assertTrue(EcoreUtil.equals(event, again));
        assertEquals(ids(event), ids(again));
    }

    private static List<String> ids(Event event) {
        List<String> ids = new java.util.ArrayList<>();
        event.eAllContents().forEachRemaining(object -> {
            if (object instanceof Identified identified) {
                ids.add(identified.getId());
            }
        });
        assertEquals(ids.size(), new HashSet<>(ids).size(), "ids are unique");
        return ids;
    }

    @Test
    void isWrittenWithItsElementFilesAndReadBackEqual(@TempDir Path temp) throws IOException {
        Path folder = temp.resolve("demo");
        DemoEvent.write(folder);
        try (EventFolder opened = EventFolder.open(folder)) {
            assertTrue(EcoreUtil.equals(event, opened.event()));
            for (String file : DemoBirds.ELEMENT_FILES) {
                assertArrayEquals(DemoBirds.bytes(file), Files.readAllBytes(opened.path().resolve("elements").resolve(file)));
            }
        }
    }

    private static List<Finding> findings(Event event) {
        return Checks.standard().run(Outlook.of(event, null), null);
    }

    private static GeoPosition mark(Site site) {
        return new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg());
    }
}
