package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is wrong: exit code 2, one or two lines that say what, where and what to do, and nothing changed. */
class WrongInputTest {

    @TempDir
    static Path folder;

    private static Path event;

    @BeforeAll
    static void demo() throws IOException {
        event = EventCopy.ofDemo(folder.resolve("demo"));
    }

    private static Console refused(Object... arguments) {
        Console run = Console.run(arguments);
        assertEquals(2, run.code(), run.out() + run.err());
        assertEquals("", run.out());
        assertTrue(run.err().lines().count() <= 2, run.err());
        assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), run.err());
        return run;
    }

    @ParameterizedTest
    @ValueSource(strings = { "passes", "plan", "check", "pack", "review" })
    void anEventThatIsNotThere(String command) {
        assertTrue(refused(command, folder.resolve("nowhere")).err().contains("nowhere"));
    }

    @Test
    void usage() {
        assertTrue(refused("chekc", event).err().contains("check"));
        assertTrue(refused("check").err().contains("EVENT"));
        assertTrue(refused("passes", event, "--format", "xml").err().contains("xml"));
        assertTrue(refused("passes", event, "--site", "Nowhere At All").err().contains("Nowhere At All"));
        assertTrue(refused("plan", event, "--seconds", "-1").err().contains("-1"));
        assertTrue(refused("plan", event, "--rounds", "-3").err().contains("-3"));
        assertTrue(refused("publish", event).err().contains("--out"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "demo", "import", "passes", "plan", "check", "pack", "review", "publish", "lines", "reach", "export" })
    void everyCommandHasHelp(String command) {
        Console help = command.isEmpty() ? Console.run("--help") : Console.run(command, "--help");
        assertEquals(0, help.code());
        assertTrue(help.out().startsWith("Usage: straddle"), help.out());
    }

    @Test
    void aTraceOnlyWhenAskedFor() {
        Console traced = Console.run("--trace", "check", folder.resolve("nowhere"));
        assertEquals(2, traced.code());
        assertTrue(traced.err().contains("\tat "), traced.err());
    }

    @Test
    void aBadElementFileChangesNothing() throws IOException {
        TreeMap<String, String> before = contents();
        Path bad = folder.resolve("bad.tle");
        String good = """
                Tern-1 (demo)
                1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753
                2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667
                """;
        Files.writeString(bad, good + good.replace("331.7664", "331.7665"));
        Console run = refused("import", event, bad, "--add-birds");
        assertTrue(run.err().contains("bad.tle") && run.err().contains("line 6"), run.err());
        assertEquals(before, contents());
    }

    @Test
    void aGoodElementFileIsTakenOnce() throws IOException {
        Path other = EventCopy.ofDemo(folder.resolve("other"));
        Path good = folder.resolve("good.tle");
        // Object 00005 of the SGP4 verification set (Vallado et al., AIAA 2006-6753).
        Files.writeString(good, """
                1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753
                2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667
                """);
        Console left = Console.run("import", other, good);
        assertEquals(0, left.code(), left.err());
        assertTrue(left.out().contains("Nothing to import: no element set is new for a bird of the event. 1 element set belongs to a bird that") && left.out().contains("--add-birds"), left.out());
        Console taken = Console.run("import", other, good, "--add-birds");
        assertEquals(0, taken.code(), taken.err());
        assertTrue(taken.out().contains("1 element set for 1 bird"), taken.out());
        Console again = Console.run("import", other, good);
        assertTrue(again.out().contains("1 is already known."), again.out());
        assertEquals(Files.readString(good), Files.readString(other.resolve("elements/good.tle")));
    }

    /** Forty days of invented values in the columns of the IERS finals2000A file; the demo event is among them. */
    @Test
    void earthOrientationIsKnownByItsContentAndPassesRestOnIt() throws IOException {
        Path other = EventCopy.ofDemo(folder.resolve("turning"));
        assertTrue(Console.run("passes", other).out().contains("No Earth orientation"));
        StringBuilder rows = new StringBuilder();
        for (LocalDate day = LocalDate.of(2027, 6, 1); day.isBefore(LocalDate.of(2027, 7, 11)); day = day.plusDays(1)) {
            rows.append(String.format(Locale.ROOT, "%2d%2d%2d %d.00 I  0.100000 0.000031  0.300000 0.000025  I 0.0200000"
                    + " 0.0000042  1.3154 0.0035  I    -0.094    0.119    -0.077    0.029%n", day.getYear() % 100,
                    day.getMonthValue(), day.getDayOfMonth(), 40_587 + day.toEpochDay()));
        }
        Path file = folder.resolve("turning.txt");
        Files.writeString(file, rows + "27 711 cut off here\n");
        assertTrue(refused("import", other, file).err().contains("turning.txt"));
        assertFalse(Files.exists(other.resolve("elements/finals2000a-turning.txt")));

        Files.writeString(file, rows);
        Console taken = Console.run("import", other, file);
        assertEquals(0, taken.code(), taken.err());
        assertTrue(taken.out().contains("2027-06-01 to 2027-07-10"), taken.out());
        assertEquals(rows.toString(), Files.readString(other.resolve("elements/finals2000a-turning.txt")));
        assertFalse(Console.run("passes", other).out().contains("No Earth orientation"));
    }

    private static TreeMap<String, String> contents() throws IOException {
        TreeMap<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(event)) {
            List<Path> regular = files.filter(file -> Files.isRegularFile(file)
                    && !file.getFileName().toString().equals(".straddle-lock")).toList();
            for (Path file : regular) {
                contents.put(event.relativize(file).toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
