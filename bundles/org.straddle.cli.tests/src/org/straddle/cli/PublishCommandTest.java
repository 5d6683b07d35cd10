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
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Revision;
import org.straddle.store.EventFolder;

/** A publication is whole or was none, and no number of a revision is given to two schedules. */
class PublishCommandTest {

    /** The coordinator's list of where the announcement comes from names bases and drives, so it is private. */
    private static final List<String> SHEETS = List.of("private/sources.html", "private/sources.txt",
            "public/announcement.html", "public/announcement.txt");

    @TempDir
    Path temp;
    private Path event;
    private Path out;

    @BeforeEach
    void make() throws IOException {
        event = temp.resolve("event");
        out = temp.resolve("out");
        Event small = Fresh.event("Midsummer");
        small.setZone("Atlantic/Reykjavik");
        EventFolder.create(event, small).close();
    }

    private List<Integer> revisions() throws IOException {
        try (EventFolder folder = EventFolder.openReadOnly(event)) {
            return folder.event().getRevisions().stream().map(Revision::getNumber).toList();
        }
    }

    private void rename(String name) throws IOException {
        try (EventFolder folder = EventFolder.open(event)) {
            folder.event().setName(name);
            folder.save();
        }
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(out)) {
            return all.filter(Files::isRegularFile).map(file -> out.relativize(file).toString()).sorted().toList();
        }
    }

    @Test
    void whatEverybodyWillSeeIsToldFirst() throws IOException {
        Console publish = Console.run("publish", event, "--out", out);
        assertTrue(publish.code() < 2, publish.err());
        assertTrue(publish.out().indexOf("For everybody") < publish.out().indexOf("announcement.html\n"), publish.out());
        assertEquals(SHEETS, files());
        assertEquals(List.of(1), revisions());
    }

    @Test
    void aDryRunWritesNothingAndNeedsNoLock() throws IOException {
        try (EventFolder held = EventFolder.open(event)) {
            Console dry = Console.run("publish", event, "--out", out, "--dry-run");
            assertTrue(dry.code() < 2, dry.err());
            assertTrue(dry.out().contains("For everybody") && dry.out().contains("Nothing was written."), dry.out());
        }
        assertFalse(Files.exists(out));
        assertEquals(List.of(), revisions());
    }

    @Test
    void aPublicationThatCannotBeWrittenLeavesNoRevision() throws IOException {
        Files.writeString(out, "a file in place of the folder");
        Console publish = Console.run("publish", event, "--out", out);
        assertEquals(2, publish.code());
        assertTrue(publish.err().lines().count() <= 2 && publish.err().contains("Nothing was published"), publish.err());
        assertEquals(List.of(), revisions());
        assertEquals("a file in place of the folder", Files.readString(out));
    }

    @Test
    void noNumberIsGivenToTwoSchedules() throws IOException {
        Console.run("publish", event, "--out", out);
        // Killed after the revision was written down: its sheets never came into place, and what was prepared is left.
        Files.delete(out.resolve("public/announcement.txt"));
        Files.createDirectories(out.resolve(".straddle-publish/public"));
        Files.writeString(out.resolve(".straddle-publish/public/announcement.txt"), "half");
        Console again = Console.run("publish", event, "--out", out);
        assertTrue(again.out().contains("Revision 1"), again.out());
        assertEquals(SHEETS, files());
        rename("Another name");
        Console changed = Console.run("publish", event, "--out", out);
        assertTrue(changed.out().contains("Revision 2"), changed.out());
        assertEquals(List.of(1, 2), revisions());
        assertTrue(Files.readString(out.resolve("public/announcement.txt")).contains("Revision 2"));
    }
}
