package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Stop;

class PublicationTest {

    private static final String HOSTILE = "<script>alert(\"x\")</script> & '${1+1}' <#if>\n]]>\u0007\n! Forged line";
    private static final String AS_ONE_LINE = "<script>alert(\"x\")</script> & '${1+1}' <#if> ]]> ! Forged line";

    private final Sketch sketch = new Sketch();

    @Test
    void hasOneAnnouncementAndABriefAndAPackingListForEachTeam() {
        assertEquals(Set.of("announcement.html", "announcement.txt", "brief-team-1.html", "brief-team-1.txt",
                "brief-team-2.html", "brief-team-2.txt", "packing-team-1.html", "packing-team-1.txt",
                "packing-team-2.html", "packing-team-2.txt"), names(sketch.publication()));
    }

    @Test
    void teamsWithOneNumberKeepTheirOwnFiles() {
        sketch.second.setNumber(1);
        Publication publication = sketch.publication();
        assertEquals(10, names(publication).size());
        assertTrue(Sketch.sheet(publication, "brief-team-1-2.txt").contains("Turnstones"));
    }

    private static Set<String> names(Publication publication) {
        return publication.sheets().stream().map(Sheet::fileName).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void theBriefLinksItsPackingList() throws Exception {
        Publication publication = sketch.publication();
        StrictPage page = new StrictPage(Sketch.sheet(publication, "brief-team-2.html"));
        String target = page.elements("a").get(0).getAttribute("href");
        assertTrue(names(publication).contains(target), target);
    }

    @Test
    void hostileWordsStayWords() throws Exception {
        sketch.event.setName(HOSTILE);
        sketch.event.setClub(HOSTILE);
        sketch.event.setAnnouncementText(HOSTILE);
        sketch.first.setName(HOSTILE);
        sketch.corner.setName(HOSTILE);
        sketch.corner.getSquares().add(HOSTILE);
        sketch.bird.setName(HOSTILE);
        sketch.base.setName(HOSTILE);
        Operator operator = sketch.first.getOperators().get(0);
        operator.setName(HOSTILE);
        operator.setCallSign(HOSTILE);
        operator.setEmergencyContact(HOSTILE);
        operator.getSkills().add(HOSTILE);
        Review review = sketch.reviewed(sketch.corner);
        review.setReviewer(HOSTILE);
        review.setConditions(HOSTILE);
        review.getSurvey().setAccess(HOSTILE);
        review.getSurvey().getHazards().get(0).setDescription(HOSTILE);
        review.getSurvey().getHazards().get(0).setMeasure(HOSTILE);
        Stop stop = sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        sketch.turn(stop, "20T10:00", "20T10:10").setNote(HOSTILE);
        Finding finding = new Finding("odd", Severity.BLOCKER, HOSTILE, List.of(stop), Optional.empty(),
                Optional.empty(), "", Optional.empty());
        Publication publication = sketch.publication(finding);
        for (String name : List.of("announcement", "brief-team-1")) {
            StrictPage page = new StrictPage(Sketch.sheet(publication, name + ".html"));
            assertEquals(0, page.elements("script").size());
            assertTrue(page.text("title").contains(AS_ONE_LINE), page.text("title"));
            String text = Sketch.sheet(publication, name + ".txt");
            assertTrue(text.contains(name.startsWith("brief") ? "Brief for " + AS_ONE_LINE : "! Forged line"), text);
            assertTrue(text.lines().noneMatch(line -> line.strip().equals("! Forged line")), text);
            assertFalse(text.contains("\u0007"));
        }
        String brief = new StrictPage(Sketch.sheet(publication, "brief-team-1.html")).text("body");
        assertTrue(brief.split("Forged line", -1).length > 12, "each place where somebody typed");
    }

    @Test
    void isWrittenAsItIs(@TempDir Path temp) throws IOException {
        Publication publication = sketch.publication();
        Path folder = temp.resolve("new/deep");
        List<Path> files = publication.write(folder);
        assertEquals(publication.sheets().size(), files.size());
        for (int i = 0; i < files.size(); i++) {
            assertEquals(publication.sheets().get(i).text(), Files.readString(files.get(i)));
        }
        assertEquals(names(publication), filesIn(folder));
    }

    @Test
    void aLaterRevisionReplacesTheEarlier(@TempDir Path temp) throws IOException {
        sketch.publication().write(temp);
        Files.writeString(temp.resolve("mine.txt"), "kept");
        sketch.event.setName("Another name");
        sketch.publication().write(temp);
        assertTrue(Files.readString(temp.resolve("announcement.txt")).startsWith("ANOTHER NAME\n"));
        assertEquals("kept", Files.readString(temp.resolve("mine.txt")));
    }

    @Test
    void whatCannotBeWrittenChangesNothing(@TempDir Path temp) throws IOException {
        sketch.publication().write(temp);
        String before = Files.readString(temp.resolve("announcement.txt"));
        // A folder stands where the last file is to be prepared.
        Files.createDirectories(temp.resolve(".packing-team-2.txt.new/in the way"));
        sketch.event.setName("Another name");
        IOException failure = assertThrows(IOException.class, () -> sketch.publication().write(temp));
        assertTrue(failure.getMessage().startsWith("The sheets cannot be written to " + temp), failure.getMessage());
        assertEquals(before, Files.readString(temp.resolve("announcement.txt")));
        assertTrue(filesIn(temp).stream().filter(name -> name.startsWith(".")).toList()
                .equals(List.of(".packing-team-2.txt.new")), filesIn(temp).toString());
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed(@TempDir Path temp) throws IOException {
        Path file = Files.createFile(temp.resolve("file"));
        IOException failure = assertThrows(IOException.class, () -> sketch.publication().write(file));
        assertTrue(failure.getMessage().contains(file.toString()), failure.getMessage());
    }

    private static Set<String> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void revisionsCountFromOne() {
        assertThrows(IllegalArgumentException.class,
                () -> new PublicationSettings(0, Sketch.FIRST.revisedAt()));
    }
}
