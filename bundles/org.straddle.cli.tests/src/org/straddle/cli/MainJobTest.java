package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Stop;
import org.straddle.store.EventFolder;

/**
 * The main job from end to end, as a coordinator does it: demo, check, plan, check, publish. What several tests start from is
 * made once; a test that changes an event has a copy of its own.
 */
class MainJobTest {

    @TempDir
    static Path folder;

    private static Path draft;
    private static Path planned;

    @BeforeAll
    static void demoAndPlan() throws IOException {
        draft = folder.resolve("demo");
        Console made = Console.run("demo", draft);
        assertEquals(0, made.code(), made.err());
        assertTrue(made.out().contains("3 teams, 8 operators"), made.out());
        planned = EventCopy.of(draft, folder.resolve("planned"));
        Console plan = Console.run("plan", planned, "--rounds", 300, "--seed", 7);
        assertEquals(0, plan.code(), plan.err());
    }

    @Test
    void aSecondDemoDoesNotOverwriteTheFirst() {
        Console again = Console.run("demo", draft);
        assertEquals(2, again.code());
        assertTrue(again.err().lines().count() <= 2 && again.err().contains("demo"), again.err());
    }

    @Test
    void theDraftHasBlockersOfEveryKindOfCollision() {
        Console check = Console.run("check", draft, "--format", "csv", "--severity", "BLOCKER");
        assertEquals(1, check.code());
        List<String> rules = check.out().lines().skip(1).map(line -> line.split(",")[1]).toList();
        for (String rule : List.of("same-site", "same-square", "one-channel", "turns-too-close", "drive-too-long",
                "turn-below-mask", "turn-outside-stop")) {
            assertTrue(rules.contains(rule), rule + " not among " + new TreeSet<>(rules));
        }
    }

    @Test
    void aDryRunChangesNothing() throws IOException {
        Path event = EventCopy.of(draft, folder.resolve("dry"));
        String before = Files.readString(event.resolve("plan.xmi"));
        Console plan = Console.run("plan", event, "--rounds", 20, "--dry-run");
        assertEquals(0, plan.code(), plan.err());
        assertEquals(before, Files.readString(event.resolve("plan.xmi")));
    }

    @Test
    void aPlanLeavesNoBlocker() {
        Console check = Console.run("check", planned);
        assertEquals(List.of(), Blocked.byThePlan(check.out()), check.out());
        assertEquals(1, check.code(), "papers of sites lack");
        assertEquals(0, Console.run("check", planned, "--without-papers").code());
    }

    @Test
    void theSameSeedAndRoundsGiveTheSamePlan() {
        Console one = Console.run("plan", planned, "--rounds", 100, "--seed", 3, "--dry-run", "--format", "csv");
        Console two = Console.run("plan", planned, "--rounds", 100, "--seed", 3, "--dry-run", "--format", "csv");
        assertEquals(one.out(), two.out());
    }

    @Test
    void aBriefForEachTeamAndOneAnnouncement() throws Exception {
        Path event = EventCopy.of(planned, folder.resolve("to-publish"));
        Path out = folder.resolve("published");
        Console publish = Console.run("publish", event, "--out", out);
        assertEquals(1, publish.code(), "papers of sites lack: " + publish.err());
        assertTrue(publish.out().contains("Not cleared: team 1"), publish.out());
        try (Stream<Path> files = Files.walk(out).filter(Files::isRegularFile)) {
            TreeSet<String> names = new TreeSet<>(files.map(file -> file.getFileName().toString()).toList());
            for (String name : List.of("announcement.html", "announcement.txt", "brief-team-1.html", "brief-team-2.txt",
                    "brief-team-3.html")) {
                assertTrue(names.contains(name), name + " not among " + names);
            }
        }
        String announcement = Files.readString(out.resolve("public/announcement.txt"));
        try (EventFolder published = EventFolder.openReadOnly(event)) {
            List<Stop> stops = published.event().getPlan().getStops();
            assertFalse(stops.isEmpty());
            for (Stop stop : stops) {
                stop.getSite().getSquares().forEach(square -> assertTrue(announcement.contains(square), square));
                String brief = Files.readString(out.resolve("private/brief-team-" + stop.getTeam().getNumber() + ".txt"));
                assertTrue(brief.contains(stop.getSite().getName()), stop.getSite().getName());
            }
        }
    }

    @Test
    void packingListsShowSparesAndWhatHasNone() {
        Console pack = Console.run("pack", planned, "--team", 1);
        assertEquals(0, pack.code(), pack.err());
        assertTrue(pack.out().contains("Spare for"), pack.out());
        assertTrue(pack.out().contains("If “South dual-band radio” fails, you lose "), pack.out());
        assertTrue(pack.out().contains("because: every team on the road needs one"), pack.out());
        assertFalse(pack.out().contains("Team 2"), pack.out());
    }

    @Test
    void reviewsShowEveryStateThatTheDemoHolds() {
        Console review = Console.run("review", planned, "--format", "csv");
        assertEquals(1, review.code(), "gates of the draft are shut: " + review.err());
        for (String state : List.of("missing", "expired", "valid", "refused", "outdated")) {
            assertTrue(Pattern.compile("(?m)," + state + "[, ]").matcher(review.out()).find(), state + " not in\n" + review.out());
        }
    }

    @Test
    void passesStayAboveTheAskedPeak() {
        Console passes = Console.run("passes", planned, "--bird", "tern", "--least-peak", "45", "--format", "csv");
        assertEquals(0, passes.code(), passes.err());
        List<String> rows = passes.out().lines().skip(1).toList();
        assertFalse(rows.isEmpty());
        for (String row : rows) {
            assertTrue(row.contains("Tern-1 (demo)"), row);
            assertTrue(Double.parseDouble(row.split(",")[11]) >= 45, row);
        }
    }
}
