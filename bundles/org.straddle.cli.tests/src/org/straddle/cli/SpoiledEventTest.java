package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/** Whatever a file of an event holds, a command does its work or says what is wrong with the event. */
class SpoiledEventTest {

    private static final int EVENTS = 12;
    private static final int SPOILED_THINGS = 12;

    @TempDir
    Path folder;

    @Test
    void nothingInAnEventMakesACommandFail() throws IOException {
        Map<String, String> failures = new TreeMap<>();
        int worked = 0;
        for (long seed = 0; seed < EVENTS; seed++) {
            Path event = EventCopy.ofDemo(folder.resolve("event" + seed));
            String spoiled = spoil(event, seed);
            for (Object[] command : List.of(new Object[] { "check", event }, new Object[] { "plan", event, "--rounds", 1, "--dry-run" },
                    new Object[] { "pack", event }, new Object[] { "review", event },
                    new Object[] { "publish", event, "--out", folder.resolve("out" + seed) })) {
                Console run = Console.run(command);
                worked += run.code() == 2 ? 0 : 1;
                if (run.code() > 2 || run.err().contains("Something failed") || run.err().contains("Exception")) {
                    failures.put(command[0] + ": " + run.err(), spoiled);
                }
            }
        }
        assertEquals(Map.of(), failures);
        assertTrue(worked > 3 * EVENTS, "most events can still be worked with, so that something was tried");
    }

    private static String spoil(Path event, long seed) throws IOException {
        try (EventFolder open = EventFolder.open(event)) {
            SpoiledEvent spoiled = new SpoiledEvent(open.event(), seed);
            List<String> things = new ArrayList<>();
            while (things.size() < SPOILED_THINGS) {
                String thing = spoiled.spoil();
                try {
                    open.saving();
                    things.add(thing);
                } catch (EventFolderException refused) {
                    // No event holds such a value: it would not be opened, and so it is not saved either.
                    assertTrue(refused.what().contains("; allowed are "), refused.getMessage());
                    spoiled.undo();
                }
            }
            open.save();
            return things + ", seed " + seed;
        }
    }
}
