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
import org.straddle.check.Statement;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Stop;

class PublicationTest {

    private static final String HOSTILE = "<script>alert(\"x\")</script> & '${1+1}' <#if>\n]]>\u0007\n! Forged line";
    private static final String AS_ONE_LINE = "<script>alert(\"x\")</script> & '${1+1}' <#if> ]]> ! Forged line";

    private final Sketch sketch = new Sketch();

    @Test
    void hasOneAnnouncementWithItsSourcesAndABriefAndAPackingListForEachTeam() {
        assertEquals(Set.of("announcement.html", "announcement.txt", "brief-team-1.html", "brief-team-1.txt",
                "brief-team-2.html", "brief-team-2.txt", "packing-team-1-phone.html", "packing-team-1.html",
                "packing-team-1.txt", "packing-team-2-phone.html", "packing-team-2.html", "packing-team-2.txt",
                "sources.html", "sources.txt"), names(sketch.publication()));
    }

    @Test
    void teamsWithOneNumberKeepTheirOwnFiles() {
        sketch.second.setNumber(1);
        Publication publication = sketch.publication();
        assertEquals(14, names(publication).size());
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
        review.getVisit().setAccess(HOSTILE);
        review.getVisit().getHazards().get(0).setDescription(HOSTILE);
        review.getVisit().getHazards().get(0).setMeasure(HOSTILE);
        Stop stop = sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00");
        sketch.turn(stop, "20T10:00", "20T10:10").setNote(HOSTILE);
        Finding finding = new Finding("odd", Severity.BLOCKER, Statement.words(HOSTILE), List.of(stop), Optional.empty(),
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

    private static List<Path> write(Publication publication, Path folder) throws IOException {
        try (PreparedSheets prepared = publication.prepare(folder)) {
            return prepared.putInPlace();
        }
    }

    @Test
    void isWrittenAsItIs(@TempDir Path temp) throws IOException {
        Publication publication = sketch.publication();
        Path folder = temp.resolve("new/deep");
        List<Path> files = write(publication, folder);
        assertEquals(publication.sheets().size(), files.size());
        for (int i = 0; i < files.size(); i++) {
            assertEquals(publication.sheets().get(i).text(), Files.readString(files.get(i)));
        }
        assertEquals(Set.of("public", "private"), filesIn(folder));
        assertEquals(Set.of("announcement.html", "announcement.txt"), filesIn(folder.resolve("public")));
        assertEquals(12, filesIn(folder.resolve("private")).size());
    }

    @Test
    void aLaterRevisionReplacesTheEarlier(@TempDir Path temp) throws IOException {
        write(sketch.publication(), temp);
        Files.writeString(temp.resolve("public/mine.txt"), "kept");
        sketch.event.setName("Another name");
        write(sketch.publication(), temp);
        assertTrue(Files.readString(temp.resolve("public/announcement.txt")).startsWith("ANOTHER NAME\n"));
        assertEquals("kept", Files.readString(temp.resolve("public/mine.txt")));
    }

    @Test
    void nothingIsInPlaceBeforeItIsPutThereAndNothingIsLeftAfterwards(@TempDir Path temp) throws IOException {
        Publication publication = sketch.publication();
        publication.prepare(temp).close();
        assertEquals(Set.of(), filesIn(temp), "given up");
        publication.prepare(temp);
        assertEquals(Set.of(".straddle-publish"), filesIn(temp));
        write(publication, temp);
        assertEquals(Set.of("public", "private"), filesIn(temp), "what an interrupted publication left is gone");
    }

    @Test
    void whatCannotBeWrittenChangesNothing(@TempDir Path temp) throws IOException {
        write(sketch.publication(), temp);
        String before = Files.readString(temp.resolve("public/announcement.txt"));
        // A folder stands where the last file belongs.
        Files.delete(temp.resolve("private/packing-team-2.txt"));
        Files.createDirectories(temp.resolve("private/packing-team-2.txt/in the way"));
        sketch.event.setName("Another name");
        IOException failure = assertThrows(IOException.class, () -> sketch.publication().prepare(temp));
        assertTrue(failure.getMessage().startsWith("The sheets cannot be written to " + temp), failure.getMessage());
        assertTrue(failure.getMessage().contains("Nothing was published"), failure.getMessage());
        assertEquals(2, failure.getMessage().lines().count());
        assertEquals(before, Files.readString(temp.resolve("public/announcement.txt")));
        assertEquals(Set.of("public", "private"), filesIn(temp));
    }

    @Test
    void whatFailsWhenItIsPutInPlaceSaysWhatExists(@TempDir Path temp) throws IOException {
        try (PreparedSheets prepared = sketch.publication().prepare(temp)) {
            Files.createDirectories(temp.resolve("private/brief-team-1.html/in the way"));
            IOException failure = assertThrows(IOException.class, prepared::putInPlace);
            assertTrue(failure.getMessage().contains("Only 4 of 14 sheets"), failure.getMessage());
            assertTrue(failure.getMessage().contains("keeps its number"), failure.getMessage());
        }
        assertEquals(Set.of("public", "private"), filesIn(temp));
    }

    @Test
    void aLinkThatStandsInPlaceOfASheetIsReplacedAndNotFollowed(@TempDir Path temp) throws IOException {
        Path out = Files.createDirectories(temp.resolve("out/public")).getParent();
        Path mine = Files.writeString(temp.resolve("mine"), "mine");
        Files.createSymbolicLink(out.resolve("public/announcement.txt"), mine);
        Files.createSymbolicLink(out.resolve(".straddle-publish"), Files.createDirectory(temp.resolve("elsewhere")));
        write(sketch.publication(), out);
        assertEquals("mine", Files.readString(mine));
        assertTrue(Files.isDirectory(temp.resolve("elsewhere")));
        assertEquals(Set.of(), filesIn(temp.resolve("elsewhere")));
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed(@TempDir Path temp) throws IOException {
        Path file = Files.createFile(temp.resolve("file"));
        IOException failure = assertThrows(IOException.class, () -> sketch.publication().prepare(file));
        assertTrue(failure.getMessage().contains(file.toString()), failure.getMessage());
    }

    @Test
    void theOutlineNamesWhatEverybodyWillSee() {
        sketch.turn(sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00"), "20T10:00", "20T10:10");
        String outline = String.join("\n", sketch.publication().outline());
        for (String words : List.of("announcement.html", "Sanderlings, call signs: Q0AAR", "HP93", "turns: 1", "never upload it",
                "brief-team-2.txt")) {
            assertTrue(outline.contains(words), words + " not in\n" + outline);
        }
        assertFalse(outline.contains("555"), outline);
        assertFalse(outline.contains("Invented"), outline);
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
