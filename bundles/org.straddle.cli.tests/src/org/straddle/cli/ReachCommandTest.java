package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code reach}: windows to a far square or region, from one site or all. */
class ReachCommandTest {

    @TempDir
    static Path folder;

    private static Path event;

    @BeforeAll
    static void demo() throws IOException {
        event = EventCopy.ofDemo(folder.resolve("demo"));
    }

    private static List<String> csv(Object... more) {
        Object[] words = new Object[more.length + 4];
        System.arraycopy(new Object[] {"reach", event, "--format", "csv"}, 0, words, 0, 4);
        System.arraycopy(more, 0, words, 4, more.length);
        Console run = Console.run(words);
        assertEquals(0, run.code(), run.err());
        return run.out().lines().toList();
    }

    @Test
    void bothEndsStandAboveWhatWasAsked() {
        List<String> lines = csv("--to", "JO01", "--site", "Basalt", "--least-elevation", "7.5");
        assertEquals("site,bird,start,end,minutes,best,elevationHereDeg,elevationThereDeg,birdState,brings,bringsThere", lines.get(0));
        assertTrue(lines.size() > 5, lines.toString());
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            assertEquals("Basalt Mark", cells[0]);
            assertTrue(Double.parseDouble(cells[6]) >= 7.5 && Double.parseDouble(cells[7]) >= 7.5, line);
            assertTrue(cells[2].compareTo(cells[5]) <= 0 && cells[5].compareTo(cells[3]) <= 0, line);
        }
    }

    @Test
    void withoutASiteEverySiteIsAsked() {
        List<String> all = csv("--to", "Fjord Rim", "--bird", "Tern-1", "--least-elevation", "5");
        List<String> one = csv("--to", "Fjord Rim", "--bird", "Tern-1", "--least-elevation", "5", "--site", "Desert Post");
        assertTrue(all.containsAll(one) && one.size() < all.size());
        assertTrue(all.stream().skip(1).allMatch(line -> line.contains("Tern-1 (demo)")));
        assertTrue(csv("--to", "Fjord Rim", "--bird", "Tern-1", "--least-elevation", "0").size() > all.size());
    }

    @Test
    void theSentenceBelowTheTableSaysWhatWasAsked() {
        Console run = Console.run("reach", event, "--to", "ip62", "--site", "Desert Post", "--bird", "Tern-1");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("windows to IP62 above 5.0° at both ends"), run.out());
    }

    @Test
    void whatCannotBeAsked() {
        Console place = Console.run("reach", event, "--to", "Nowhere");
        assertEquals(2, place.code());
        assertTrue(place.err().contains("Nowhere") && place.err().contains("Fjord Rim"), place.err());
        assertEquals(2, Console.run("reach", event).code());
        assertEquals(2, Console.run("reach", event, "--to", "JO01", "--least-elevation", "90").code());
    }

    /** Auk-6 of the demo does not work; what it shows of the sky brings nothing, and is marked here and in the passes. */
    @Test
    void aBirdThatDoesNotWorkIsMarked() {
        List<String> silent = csv("--to", "Fjord Rim", "--bird", "Auk-6", "--site", "Desert Post");
        assertTrue(silent.size() > 1);
        silent.stream().skip(1).forEach(line -> assertTrue(line.endsWith(",not working,0,0"), line));
        List<String> working = csv("--to", "Fjord Rim", "--bird", "Tern-1", "--site", "Desert Post");
        assertTrue(working.stream().skip(1).noneMatch(line -> line.contains("not working")));
        assertTrue(working.stream().skip(1).mapToDouble(line -> Double.parseDouble(line.split(",")[9])).max().orElseThrow() > 1);
        List<String> passes = Console.run("passes", event, "--bird", "Auk-6", "--site", "Desert Post", "--format", "csv").out().lines().toList();
        assertTrue(passes.size() > 1 && passes.stream().skip(1).allMatch(line -> line.contains("not working")), passes.toString());
    }

    /** Without an elevation of one's own the event's policy counts, which is 5° unless somebody chose another. */
    @Test
    void reachCountsFromFiveDegrees() {
        List<String> usual = csv("--to", "Fjord Rim", "--bird", "Tern-1", "--site", "Desert Post");
        assertEquals(csv("--to", "Fjord Rim", "--bird", "Tern-1", "--site", "Desert Post", "--least-elevation", "5"), usual);
        usual.stream().skip(1).map(line -> line.split(",")).forEach(cells -> assertTrue(Double.parseDouble(cells[7]) >= 5, cells[7]));
    }

    @Test
    void passesTellTheirReach() {
        Console run = Console.run("passes", event, "--bird", "Tern-1", "--site", "Desert Post", "--reach", "--format", "csv");
        List<String> lines = run.out().lines().toList();
        assertTrue(lines.get(0).endsWith(",reachPercent"), lines.get(0));
        for (String line : lines.subList(1, lines.size())) {
            double percent = Double.parseDouble(line.substring(line.lastIndexOf(',') + 1));
            assertTrue(percent >= 0 && percent <= 100, line);
        }
    }
}
