package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.store.EventFolder;

/** A dry run only looks: it works on an event that somebody else is editing, and changes nothing. */
class DryRunTest {

    private static final String TABLE = "name,latitude,longitude\nNew Bank,64.5,-19.5\n";
    private static final String MAP = "{\"type\":\"LineString\",\"coordinates\":[[-20,64],[-20.1,64.1]]}";

    @TempDir
    Path temp;

    @Test
    void needsNoLock() throws IOException {
        Path event = EventCopy.ofDemo(temp.resolve("event"));
        Map<String, String> before = content(event);
        Path table = Files.writeString(temp.resolve("sites.csv"), TABLE);
        Path map = Files.writeString(temp.resolve("roads.geojson"), MAP);
        Path elements = event.resolve("elements/demo.tle");
        try (EventFolder held = EventFolder.open(event)) {
            for (Object[] arguments : new Object[][] {
                { "import", event, table, "--dry-run" },
                { "import", event, map, "--layer", "road", "--dry-run" },
                { "import", event, elements, "--dry-run" },
                { "plan", event, "--rounds", 1, "--dry-run" },
                { "publish", event, "--out", temp.resolve("out"), "--dry-run" } }) {
                Console run = Console.run(arguments);
                assertTrue(run.code() < 2, arguments[0] + ": " + run.err());
            }
            assertEquals(2, Console.run("import", event, table).code(), "without it, the lock holds");
        }
        assertEquals(before, content(event));
    }

    /** Not even for a moment: so it works where the disk may only be read. */
    @Test
    void writesNothingIntoTheFolder() throws IOException {
        Path event = EventCopy.ofDemo(temp.resolve("event"));
        Path table = Files.writeString(temp.resolve("sites.csv"), TABLE);
        FileTime longAgo = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));
        List<Path> places;
        try (Stream<Path> all = Files.walk(event)) {
            places = all.toList();
        }
        assertTrue(places.size() > 10, places.toString());
        for (Path place : places) {
            Files.setLastModifiedTime(place, longAgo);
        }
        Console run = Console.run("import", event, table, "--dry-run");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("1 new site"), run.out());
        for (Path place : places) {
            assertEquals(longAgo, Files.getLastModifiedTime(place), place.toString());
        }
    }

    private static Map<String, String> content(Path folder) throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) all.filter(file -> Files.isRegularFile(file)
                    && !file.getFileName().toString().startsWith("."))::iterator) {
                content.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return content;
    }
}
