package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.KitItem;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.store.EventFolder;

/** What a phone gave out comes into the event by the command line. */
class TicksTest {

    @TempDir
    Path folder;

    private Path event;
    private Path ticks;

    @BeforeEach
    void demo() {
        event = folder.resolve("rove");
        ticks = folder.resolve("ticks.csv");
        Console.run("demo", event);
    }

    private KitItem item(EventFolder opened) {
        return opened.event().getTeams().get(0).getKits().get(0).getItems().get(0);
    }

    @Test
    void ticksAreKeptWithNameAndTimeAndTheListSaysWhatIsMissing() throws IOException {
        try (EventFolder opened = EventFolder.openReadOnly(event)) {
            Team team = opened.event().getTeams().get(0);
            Stop stop = opened.event().getPlan().getStops().stream().filter(each -> each.getTeam() == team).findFirst().orElseThrow();
            Files.writeString(ticks, "id,item,tick,stop,by,at\n\"" + item(opened).getId() + "\",\"x\",car,\"" + stop.getId()
                    + "\",\"Q5GLM\",2027-06-18T12:00:00Z\n");
        }
        Console taken = Console.run("pack", event, "--ticks", ticks);
        assertEquals(0, taken.code(), taken.err());
        assertEquals("ticks.csv: 1 tick taken over, 0 cleared, 0 known already.", taken.out().strip());
        try (EventFolder opened = EventFolder.openReadOnly(event)) {
            assertEquals("Q5GLM", item(opened).getInCar().get(0).getBy());
            assertEquals("2027-06-18T12:00:00Z", item(opened).getInCar().get(0).getAt().toString());
        }
        assertTrue(Console.run("pack", event, "--team", 1).out().contains("In the car again at "));
        assertTrue(Console.run("pack", event, "--ticks", ticks).out().contains("1 known already"));
    }

    @Test
    void aTableFullOfWrongLinesIsRefusedInAFew() throws IOException {
        String wrong = IntStream.range(0, 500).mapToObj(i -> "no" + i + ",,packed,,Q5GLM,2027-06-18T12:00:00Z\n").collect(Collectors.joining());
        Files.writeString(ticks, "id,item,tick,stop,by,at\n" + wrong);
        few(Console.run("pack", event, "--ticks", ticks));
        Files.writeString(ticks, "item,count,odd,odder\n" + IntStream.range(0, 500).mapToObj(i -> "thing " + i + ",many,1,2\n").collect(Collectors.joining()));
        few(Console.run("import", event, "--kits", ticks));
    }

    private static void few(Console refused) {
        assertEquals(2, refused.code());
        assertEquals("", refused.out());
        assertTrue(refused.err().lines().count() <= 5, refused.err());
        assertTrue(refused.err().contains("497 more lines are wrong. Nothing was changed."), refused.err());
    }
}
