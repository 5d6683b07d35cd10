package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The gate, the figures and the pages from the command line. */
class ReviewCommandTest {

    @TempDir
    private Path folder;

    private Path event;

    @BeforeEach
    void theDemo() throws IOException {
        event = EventCopy.ofDemo(folder.resolve("rove"));
    }

    @Test
    void exitsWithOneWhileAGateIsShutAndSaysWhatIsOpen() {
        Console review = Console.run("review", event);
        assertEquals(1, review.code(), review.err());
        assertTrue(review.out().contains("Team 2 on 18 Jun 2027: not cleared"), review.out());
        assertTrue(review.out().contains("kit tested: Nobody says that the kit was tested. To settle by the team."), review.out());
        assertTrue(review.out().contains("Not cleared: team 1, "), review.out());
    }

    @Test
    void checkEndsWithTheGate() {
        List<String> lines = Console.run("check", event).out().lines().toList();
        assertTrue(lines.get(lines.size() - 1).startsWith("Not cleared: team 1, "), lines.get(lines.size() - 1));
    }

    @Test
    void aWordSettlesAnItemAndStays() {
        Console settled = Console.run("review", event, "--settle", "briefed", "--team", 2, "--day", "2027-06-18", "--by", "Ines");
        assertEquals(1, settled.code(), settled.err());
        String team = section(Console.run("review", event).out(), "Team 2 on 18 Jun 2027");
        assertFalse(team.contains("briefed"), team);
        assertTrue(section(settled.out(), "Team 2 on 19 Jun 2027").contains("briefed"), "another day");
    }

    @Test
    void anOverrideIsPrintedOnTheBrief() throws Exception {
        Console.run("review", event, "--override", "tested", "--team", 2, "--day", "2027-06-18", "--by", "Ines", "--reason",
                "Tested on the way.");
        Path out = folder.resolve("out");
        Console.run("publish", event, "--out", out);
        try (Stream<Path> files = Files.walk(out)) {
            String brief = Files.readString(files.filter(file -> file.endsWith("brief-team-2.txt")).findFirst().orElseThrow());
            assertTrue(brief.contains("Ines overrides this: Tested on the way."), brief);
            assertTrue(brief.contains("NOT CLEARED TO LEAVE"), brief);
        }
    }

    @Test
    void aReviewThatOnePersonSignedOpensNoGateUntilASecondDoes() throws Exception {
        Path site = event.resolve("sites/basalt-mark.xmi");
        Files.writeString(site, Files.readString(site).replaceAll("second(At)?=\"[^\"]*\"", ""));
        assertTrue(section(Console.run("review", event).out(), "Team 1 on 18 Jun 2027").contains("Only Q2MRL signed the review"));
        Console same = Console.run("review", event, "--site", "basalt", "--second", "marlo sandgrouse");
        assertEquals(2, same.code(), same.out());
        assertTrue(same.err().contains("somebody else's"), same.err());
        Console stranger = Console.run("review", event, "--site", "basalt", "--second", "Otto");
        assertEquals(2, stranger.code(), stranger.out());
        assertEquals("Only another operator of this event, its coordinator or its deputy may sign second.", stranger.err().strip());
        Console signed = Console.run("review", event, "--site", "basalt", "--second", "tam whinchat (INVENTED)");
        assertEquals(0, signed.code(), signed.err());
        assertFalse(section(Console.run("review", event).out(), "Team 1 on 18 Jun 2027").contains("reviews:"));
        assertEquals(2, Console.run("review", event, "--site", "basalt", "--second", "Otto").code(), "nothing waits any more");
    }

    @Test
    void aReviewSignedByNobodyOfTheEventIsAFindingAndShutsTheGate() throws Exception {
        Path site = event.resolve("sites/basalt-mark.xmi");
        Files.writeString(site, Files.readString(site).replace("reviewer=\"Q2MRL\"", "reviewer=\"Sam\""));
        Console check = Console.run("check", event);
        assertTrue(check.out().contains("review-signer-unknown"), check.out());
        String gate = section(Console.run("review", event).out(), "Team 1 on 18 Jun 2027");
        assertTrue(gate.contains("Sam signed the review, and is nobody who may. Only an operator of team 1 (Southern Lanterns) may sign first:"), gate);
    }

    private static String section(String printed, String from) {
        int start = printed.indexOf(from);
        int end = printed.indexOf("\nTeam", start + 1);
        return printed.substring(start, end < 0 ? printed.length() : end);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--explain", "--sheet", "--second Ines", "--second Ines --site driftwood", "--settle briefed", "--settle nothing --team 2 --day 2027-06-18 --by Ines",
        "--settle briefed --team 9 --day 2027-06-18 --by Ines", "--settle briefed --team 2 --day 2027-07-18 --by Ines",
        "--settle review --team 2 --day 2027-06-18 --by Ines", "--override review --team 2 --day 2027-06-18 --by Ines",
        "--settle briefed --team 2 --day 2027-06-18"})
    void whatIsMissingOrWrongIsRefusedInWords(String options) {
        Object[] all = Stream.concat(Stream.of("review", event), Stream.of(options.split(" "))).toArray();
        Console refused = Console.run(all);
        assertEquals(2, refused.code(), refused.out());
        assertTrue(refused.err().lines().count() <= 2 && !refused.err().contains("Exception"), refused.err());
    }

    @Test
    void everyFigureSaysItsSource() {
        Console figures = Console.run("review", event, "--site", "four winds", "--explain");
        assertEquals(0, figures.code(), figures.err());
        for (String part : List.of("Stopping distance: At 70 km/h a driver needs 105 m", "AASHTO", "higher than 10 m",
                "Nobody entered a forecast")) {
            assertTrue(figures.out().contains(part), part + " not in " + figures.out());
        }
    }

    @Test
    void aPageForEachStopInThreeFiles() throws Exception {
        Path out = folder.resolve("pages");
        Console pages = Console.run("review", event, "--site", "desert post", "--sheet", "--out", out);
        assertEquals(0, pages.code(), pages.err());
        try (Stream<Path> files = Files.list(out)) {
            List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
            assertEquals(0, names.size() % 3, names.toString());
            assertTrue(names.contains("team-2-2027-06-19-desert-post-a4.pdf"), names.toString());
        }
    }
}
