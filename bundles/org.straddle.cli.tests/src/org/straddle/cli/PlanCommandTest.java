package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/** Pins, bans and what-ifs of the command line, each on a copy of the demo event with the same plan. */
class PlanCommandTest {

    @TempDir
    static Path shared;

    private static Path planned;

    @TempDir
    Path folder;

    private Path path;

    @BeforeAll
    static void plan() throws IOException {
        planned = EventCopy.ofDemo(shared.resolve("planned"));
        done("plan", planned, "--rounds", 60, "--seed", 1);
    }

    @BeforeEach
    void copyThePlannedEvent() throws IOException {
        path = EventCopy.of(planned, folder.resolve("demo"));
    }

    private static Console done(Object... arguments) {
        Console run = Console.run(arguments);
        assertEquals(0, run.code(), run.err());
        return run;
    }

    private interface Reader<T> {
        T of(Event event);
    }

    private <T> T read(Reader<T> reader) {
        try (EventFolder open = EventFolder.openReadOnly(path)) {
            return reader.of(open.event());
        } catch (EventFolderException failure) {
            throw new AssertionError(failure);
        }
    }

    private List<String> stopsOf(int team) {
        return read(event -> event.getPlan().getStops().stream().filter(stop -> stop.getTeam().getNumber() == team)
                .map(stop -> stop.getId() + stop.getArrival() + stop.getDeparture() + stop.getTurns().stream()
                        .map(turn -> turn.getStart().toString()).sorted().toList()).sorted().toList());
    }

    private List<String> turnsOf(int team) {
        return read(event -> event.getPlan().getStops().stream().filter(stop -> stop.getTeam().getNumber() == team)
                .flatMap(stop -> stop.getTurns().stream())
                .map(turn -> turn.getId() + turn.getStart() + turn.getEnd()).sorted().toList());
    }

    private List<String> bans() {
        return read(event -> event.getPlan().getBans().stream().map(ban -> ban.getReason()).toList());
    }

    private Instant arrival(int team, int number) {
        return read(event -> event.getPlan().getStops().stream().filter(stop -> stop.getTeam().getNumber() == team)
                .map(Stop::getArrival).sorted().toList().get(number));
    }

    @ParameterizedTest
    @CsvSource({ "--stopped,9", "--stopped,2@noon", "--stopped,2@2031-06-21T12:00Z/2031-06-21T10:00Z", "--closed,Nowhere", "--silent,Nobody",
        "--late,2", "--pin,Nowhere", "--ban,nonsense", "--ban,colour=red", "--ban,reason=why", "--ban,square=ZZZZ",
        "--replan-from,today", "--keep,-1" })
    void whatCannotBeMeantChangesNothing(String option, String value) throws IOException {
        String before = Files.readString(path.resolve("plan.xmi"));
        Console run = Console.run("plan", path, "--rounds", 1, option, value);
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().lines().count() <= 2 && run.err().contains(option.substring(2, 5)) || run.err().contains(value), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
        assertEquals(before, Files.readString(path.resolve("plan.xmi")));
    }

    @Test
    void withNothingToPlanThePlanStaysAsItIs() throws IOException {
        String before = Files.readString(path.resolve("plan.xmi"));
        Console run = Console.run("plan", path, "--rounds", 1, "--replan-from", "2040-01-01T00:00Z");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains("nothing to plan") && run.err().contains("No team is on the road"), run.err());
        assertEquals(before, Files.readString(path.resolve("plan.xmi")));
    }

    @Test
    void whatIsPinnedStays() {
        List<String> before = stopsOf(1);
        assertFalse(before.isEmpty());
        done("plan", path, "--rounds", 40, "--seed", 9, "--pin", 1);
        assertKept(before, stopsOf(1));
        List<String> kept = before.stream().map(PlanCommandTest::withoutTurns).toList();
        boolean pinned = read(event -> event.getPlan().getStops().stream()
                .filter(stop -> kept.contains(stop.getId() + stop.getArrival() + stop.getDeparture())).allMatch(Stop::isPinned));
        assertTrue(pinned);
        done("plan", path, "--rounds", 40, "--unpin", 1, "--keep", 50);
        // A stop that may change again may become longer.
        assertKept(before.stream().map(PlanCommandTest::withoutDeparture).toList(),
                stopsOf(1).stream().map(PlanCommandTest::withoutDeparture).toList());
    }

    /** The same stops at the same times with all their turns; there may be more, where a bird or the team became free. */
    private static void assertKept(List<String> before, List<String> after) {
        for (String stop : before) {
            List<String> same = after.stream().filter(now -> withoutTurns(now).equals(withoutTurns(stop))).toList();
            assertEquals(1, same.size(), stop + " is not among " + after);
            assertTrue(List.of(turns(same.get(0))).containsAll(List.of(turns(stop))), stop + " became " + same);
        }
    }

    private static String withoutDeparture(String stop) {
        int turns = stop.indexOf('[');
        return stop.substring(0, turns - "2027-06-18T15:28:00Z".length()) + stop.substring(turns);
    }

    private static String withoutTurns(String stop) {
        return stop.substring(0, stop.indexOf('['));
    }

    private static String[] turns(String stop) {
        return stop.substring(stop.indexOf('[') + 1, stop.indexOf(']')).split(", ");
    }

    @Test
    void aBreakdownChangesTheRestOfThatTeamsDayOnly() {
        Instant from = arrival(2, 1).plusSeconds(600);
        List<String> others = turnsOf(3);
        Console run = done("plan", path, "--rounds", 60, "--keep", 50, "--replan-from", from, "--stopped",
                "2@" + from + "/" + from.plusSeconds(4 * 3600), "--list", "changes", "--format", "csv");
        assertTrue(run.out().contains("dropped,") && run.out().contains("Team 2 cannot go on"), run.out());
        assertTrue(turnsOf(3).containsAll(others), () -> "another team's turns stay: " + run.out());
        assertEquals(List.of("Team 2 cannot go on"), bans());
        assertEquals(List.of(), Blocked.byThePlan(Console.run("check", path).out()));
    }

    @Test
    void whatIfsAreTriedWithoutChangingAnything() throws IOException {
        String before = Files.readString(path.resolve("plan.xmi"));
        String site = read(event -> event.getPlan().getStops().get(0).getSite().getName());
        String bird = read(event -> event.getPlan().getStops().get(0).getTurns().get(0).getBird().getName());
        Console run = done("plan", path, "--rounds", 30, "--dry-run", "--closed", site, "--silent", bird, "--late",
                "3@" + arrival(3, 0).plusSeconds(7200));
        assertTrue(run.out().contains("is closed") && run.out().contains("is silent") && run.out().contains("starts late"), run.out());
        assertTrue(run.out().contains("kept, "), run.out());
        assertEquals(before, Files.readString(path.resolve("plan.xmi")));
    }

    @Test
    void bansStayInTheEventUntilTheyAreLifted() {
        done("plan", path, "--rounds", 5, "--ban", "team=3,reason=no operator");
        assertEquals(List.of("no operator"), bans());
        done("plan", path, "--rounds", 20, "--lift-bans", "--ban", "team=1,reason=no driver, no car");
        assertEquals(List.of("no driver, no car"), bans());
        assertEquals(List.of(), stopsOf(1));
        assertTrue(done("plan", path, "--rounds", 20, "--list", "uncovered", "--format", "json").out().contains("\"why\""));
        done("plan", path, "--rounds", 20, "--lift-bans");
        assertFalse(stopsOf(1).isEmpty());
    }
}
