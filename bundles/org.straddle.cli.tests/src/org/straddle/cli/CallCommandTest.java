package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The log of check-in calls. */
class CallCommandTest {

    @TempDir
    private Path folder;

    private Path event;

    @BeforeEach
    void theDemo() throws IOException {
        event = EventCopy.ofDemo(folder.resolve("rove"));
    }

    private List<String> calls(String now) {
        return Console.run("call", event, "--team", 1, "--now", now, "--format", "csv").out().lines().skip(1).toList();
    }

    @Test
    void aCallThatIsNotedCountsAndOneThatDoesNotComeIsMissedInItsMinute() {
        List<String> before = calls("2027-06-18T00:00Z");
        assertTrue(before.stream().allMatch(line -> line.contains(",ahead,")), before.toString());
        String[] first = before.get(0).split(",");
        String due = first[2];
        String act = first[3];
        assertTrue(calls(due).get(0).contains(",due,"), "at its minute nobody acts yet");
        assertTrue(calls(act).get(0).contains(",due,"), "until the minute in which somebody acts");
        assertTrue(calls(java.time.Instant.parse(act).plusSeconds(1).toString()).get(0).contains(",missed,"));
        assertEquals(1, Console.run("call", event, "--now", java.time.Instant.parse(act).plusSeconds(1)).code());
        Console noted = Console.run("call", event, "--team", 1, "--by", "Ines", "--at", due, "--note", "all well", "--now", act);
        assertEquals(0, noted.code(), noted.err());
        assertTrue(calls("2027-06-30T00:00Z").get(0).endsWith(",came,Ines,all well"), calls("2027-06-30T00:00Z").get(0));
    }

    @Test
    void aTeamIsNamedByItsNumberOrItsName() {
        List<String> byName = Console.run("call", event, "--team", "lanterns", "--now", "2027-06-18T00:00Z", "--format", "csv")
                .out().lines().skip(1).toList();
        assertEquals(calls("2027-06-18T00:00Z"), byName);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--by Ines", "--by Ines --team 9", "--by Ines --team 1 --at noon", "--now noon", "--team 1 --by  "})
    void whatIsMissingOrWrongIsRefusedInWords(String options) {
        Console refused = Console.run(Stream.concat(Stream.of("call", event), Stream.of(options.split(" ", -1))).toArray());
        assertEquals(2, refused.code(), refused.out());
        assertTrue(refused.err().lines().count() <= 3 && !refused.err().contains("Exception"), refused.err());
    }
}
