package org.straddle.exchange.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.exchange.ReadException;
import org.straddle.model.Event;
import org.straddle.model.SiteKind;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/** A new event out of lines of text, in another country than the demo's. */
class EventStartTest {

    /** Invented, and its checksums are right. */
    private static final String ELEMENTS = """
            PLOVER-7
            1 90007U 31001A   31171.50000000  .00000000  00000-0  00000-0 0  9999
            2 90007  97.5000 120.0000 0010000  90.0000 270.0000 14.90000000    05
            """;

    private static EventStart start(String teams, SkyFiles files, String downlinks) {
        return new EventStart("Fen rove", "Fen Circle", LocalDate.of(2031, 6, 20), LocalDate.of(2031, 6, 21), "Europe/Lisbon",
                "Old Mill, 38.7 -9.1\nHigh Barn; 41,15 N 8,61 W", "q0aar Ann Example, 2 m 70cm\nQ1SKY", teams,
                "Cork Oak, 39.5 -8.5\nLine Stone, 39.3 -8.0", 12, files == null ? List.of() : files.elements(), downlinks,
                "IM59 IM69 60\nIN50 40 %");
    }

    @Test
    void anEventIsMadeOfLines() {
        Event event = start("Herons: Q0AAR Q1SKY @ Old Mill > High Barn\nStorks: @ High Barn", null, "").event();
        assertEquals(List.of("Old Mill", "High Barn"), event.getBases().stream().map(base -> base.getName()).toList());
        assertEquals(41.15, event.getBases().get(1).getLatitudeDeg(), 1e-9);
        assertEquals(-8.61, event.getBases().get(1).getLongitudeDeg(), 1e-9);
        assertEquals("Q0AAR", event.getOperators().get(0).getCallSign());
        assertEquals(List.of("2m", "70cm"), event.getOperators().get(0).getBands());
        Team herons = event.getTeams().get(0);
        assertEquals(1, herons.getNumber());
        assertEquals(event.getOperators(), herons.getOperators());
        // 8:00 in Lisbon in summer is 7:00 UTC; the second day starts where the first ended.
        assertEquals(Instant.parse("2031-06-20T07:00:00Z"), herons.getDays().get(0).getFrom());
        assertEquals(2, herons.getDays().size());
        assertEquals("Old Mill", herons.getDays().get(0).getStart().getName());
        assertEquals("High Barn", herons.getDays().get(1).getStart().getName());
        assertEquals(SiteKind.LINE, event.getSites().get(1).getKind());
        assertEquals(List.of("IM59", "IM69"), event.getSites().get(1).getSquares());
        assertEquals(3, event.getDemands().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Mill                       | Write a name, a comma and a position
            Mill, 38,7                 | one number with a decimal comma
            Mill, 95 -9                | latitude 95
            """)
    void aPlaceThatCannotBeReadSaysWhatToWrite(String line, String problem) {
        ReadLines<?> read = PlaceLines.bases("Good, 38.7 -9.1\n\n" + line);
        assertEquals(1, read.things().size());
        assertFalse(read.isRead());
        assertEquals(3, read.lines().get(1).number());
        assertTrue(read.lines().get(1).told().contains(problem), read.lines().get(1).told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Ann Example                | Write a call sign
            Q0AAR Ann, 435 MHz         | is not a band
            """)
    void anOperatorThatCannotBeReadSaysWhatToWrite(String line, String problem) {
        String told = CrewLines.operators(line).lines().get(0).told();
        assertTrue(told.contains(problem), told);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Herons: Q9ZZZ              | Q9ZZZ is not among the operators
            Herons: Q0AAR @ Nowhere    | Nowhere is not among the bases
            """)
    void aTeamNamesWhatIsThere(String line, String problem) {
        ReadLines<Team> read = start(line, null, "").readTeams();
        assertTrue(read.things().isEmpty());
        assertTrue(read.lines().get(0).told().contains(problem), read.lines().get(0).told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            IM59                       | Write squares and a percentage
            IM59 120                   | 0 to 100
            60                         | Write squares and a percentage
            """)
    void demandNeedsASquareAndAShare(String line, String problem) {
        String told = DemandLines.read(line).lines().get(0).told();
        assertTrue(told.contains(problem), told);
    }

    /** A station of 10 m on a mark good to 5 m stands on both sides of a line with 98.5 % only, and 99 % are wanted. */
    @Test
    void aSiteSaysWhatStationItsSquaresNeed() {
        EventStart narrow = new EventStart("Fen rove", "", null, null, null, "", "", "", "Line Stone, 39.3 -8.0", 10, List.of(), "", "");
        ReadLines.Line<?> line = narrow.readSites().lines().get(0);
        assertTrue(line.thing().isPresent());
        assertTrue(line.told().contains("98") && line.told().startsWith("Line Stone: needs a station of 10.6 m;") && line.open(), line.told());
        assertFalse(start("", null, "").readSites().lines().get(1).open());
        assertTrue(narrow.missing().stream().anyMatch(missing -> missing.contains("station") && missing.contains("Line Stone")),
                narrow.missing().toString());
        assertEquals(12, start("", null, "").event().getPolicies().getStationSpanM());
    }

    @Test
    void whatIsLeftForLaterIsListed() {
        List<String> all = new EventStart("Fen rove", "", null, null, null, "", "", "", "", 10, List.of(), "", "").missing();
        assertEquals(8, all.size(), all.toString());
        assertEquals(2, start("Herons: Q0AAR Q1SKY @ Old Mill\nStorks: @ Old Mill", null, "").missing().size(),
                "a crew, and element sets");
        List<String> alone = start("Herons: Q0AAR @ Old Mill", null, "").missing();
        assertTrue(alone.get(0).startsWith("A second operator for") && alone.get(0).contains("Herons"), alone.toString());
    }

    @Test
    void elementSetsComeWithTheirDownlinksAndNothingIsMissing(@TempDir Path temp) throws IOException, ReadException, EventFolderException {
        Path file = Files.writeString(temp.resolve("birds.txt"), ELEMENTS);
        SkyFiles files = SkyFiles.read(List.of(file), new NullProgressMonitor());
        assertEquals("PLOVER-7: ", start("", files, "").downlinksToFill());
        EventStart start = start("Herons: Q0AAR Q1SKY @ Old Mill", files, "plover-7: 435,85-435.9");
        assertEquals(List.of(), start.missing());
        assertTrue(start("Herons: Q0AAR Q1SKY @ Old Mill", files, "PLOVER-7:").missing().get(0).contains("PLOVER-7"));
        try (EventFolder made = start.create(temp.resolve("event"))) {
            start.bringElements(made);
        }
        try (EventFolder again = EventFolder.open(temp.resolve("event"))) {
            assertEquals(1, again.event().getBirds().size());
            assertEquals(1, again.event().getBirds().get(0).getElementSets().size());
            assertEquals(435.85, again.event().getBirds().get(0).getDownlink().getLowMhz());
            assertEquals(WorkMode.LINEAR, again.event().getBirds().get(0).getMode());
        }
    }
}
