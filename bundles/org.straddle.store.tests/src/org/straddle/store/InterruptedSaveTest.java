package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Event;
import org.straddle.model.Site;

/**
 * Power fails at every step of a save, and at every step of the recovery after it: the folder is then as before the
 * save or as after it, and never anything between.
 */
class InterruptedSaveTest {

    @TempDir
    Path temp;
    private Event example;
    private Map<String, String> before;
    private Map<String, String> after;
    private int steps;
    private int folders;

    @BeforeEach
    void saveOnceUndisturbed() throws IOException {
        example = Example.event();
        Path first = temp.resolve("first");
        EventFolder.create(first, EcoreUtil.copy(example), FailingSteps.never()).close();
        before = FolderContent.of(first);
        Path folder = freshFolder();
        FailingSteps disk = FailingSteps.never();
        save(folder, disk);
        steps = disk.taken();
        after = FolderContent.of(folder);
        assertEquals("demo", after.get("elements/week.tle"));
        assertFalse(after.containsKey("sites/cairn.xmi"));
        assertTrue(after.containsKey("sites/new-site.xmi"));
    }

    private Path freshFolder() throws IOException {
        Path folder = temp.resolve("event" + folders++);
        for (Map.Entry<String, String> file : before.entrySet()) {
            Path place = folder.resolve(file.getKey());
            Files.createDirectories(place.getParent());
            Files.writeString(place, file.getValue(), StandardCharsets.ISO_8859_1);
        }
        return folder;
    }

    /** Finishes or throws away what was interrupted, without the slow forcing of a real disk. */
    private static void reopen(Path folder) throws IOException {
        EventFolder.open(folder, FailingSteps.never()).close();
    }

    /** A save that adds, changes and removes files. */
    private static void save(Path path, FileSteps disk) throws IOException {
        try (EventFolder folder = EventFolder.open(path, disk)) {
            Event event = folder.event();
            event.setName("Changed");
            event.getSites().remove(1);
            Site site = Example.site("New site");
            site.setId("fixed");
            event.getSites().add(site);
            event.getPlan().getStops().get(0).setSite(site);
            event.getBirds().get(1).getElementSets().add(Example.elements(folder.addElementsFile("week.tle",
                    "demo".getBytes())));
            folder.save();
        }
    }

    /** @return whether it is as after the save */
    private boolean assertBeforeOrAfter(Path folder, String when) throws IOException {
        Event seen;
        try (EventFolder reader = EventFolder.openReadOnly(folder)) {
            seen = reader.event();
        }
        reopen(folder);
        Map<String, String> found = FolderContent.of(folder);
        assertTrue(found.equals(before) || found.equals(after), when + ": " + found.keySet());
        assertEquals(found.equals(after) ? "Changed" : "Midsummer", seen.getName(), when + ": a reader saw otherwise");
        assertFalse(Files.exists(folder.resolve(SaveJournal.FOLDER)), when);
        return found.equals(after);
    }

    @Test
    void powerFailsAtEveryStepOfASave() throws IOException {
        int kept = 0;
        for (int step = 1; step <= steps; step++) {
            for (long seed = 0; seed < 2; seed++) {
                Path folder = freshFolder();
                FailingSteps disk = FailingSteps.powerFailsAt(step, seed);
                assertThrows(FailingSteps.PowerFailure.class, () -> save(folder, disk));
                kept += assertBeforeOrAfter(folder, "step " + step + " seed " + seed) ? 1 : 0;
            }
        }
        assertTrue(kept > 10 && kept < 2 * steps - 10, "both outcomes occur: " + kept + " of " + 2 * steps);
    }

    @Test
    void powerFailsAtEveryStepOfTheRecoveryToo() throws IOException {
        // Half-done saves of each kind: to throw away, to finish, and finished but for the tidying up.
        for (int step : new int[] {steps / 3, steps / 2, steps * 2 / 3, steps * 5 / 6}) {
            int failAt = step;
            for (int again = 1;; again++) {
                Path folder = freshFolder();
                assertThrows(FailingSteps.PowerFailure.class, () -> save(folder, FailingSteps.powerFailsAt(failAt, 1)));
                FailingSteps disk = FailingSteps.powerFailsAt(again, again);
                boolean failed = false;
                try {
                    EventFolder.open(folder, disk).close();
                } catch (FailingSteps.PowerFailure e) {
                    failed = true;
                }
                assertBeforeOrAfter(folder, "step " + step + ", then step " + again);
                if (!failed) {
                    break;
                }
            }
        }
    }

    @Test
    void diskFailsAtEveryStepAndTheProgramLivesOn() throws IOException {
        for (int step = 1; step <= steps; step++) {
            Path folder = freshFolder();
            FailingSteps disk = FailingSteps.diskFailsAt(step);
            EventFolderException e = assertThrows(EventFolderException.class, () -> save(folder, disk));
            boolean counts = e.what().contains("the save is stored");
            assertTrue(counts || e.what().contains("its files are as they were"), e.getMessage());
            reopen(folder);
            assertEquals(counts ? after : before, FolderContent.of(folder), "step " + step + ": " + e.getMessage());
        }
    }

    @Test
    void aSaveAfterAFailedOneWritesEverything() throws IOException {
        for (int step = 1; step <= steps; step++) {
            Path path = freshFolder();
            try (EventFolder folder = EventFolder.open(path, FailingSteps.diskFailsAt(step))) {
                folder.event().setName("Changed");
                folder.event().getSites().get(1).setAltitudeM(9);
                try {
                    folder.save();
                } catch (EventFolderException e) {
                    folder.event().getSites().get(1).setAltitudeM(11);
                    folder.save();
                }
                try (EventFolder reader = EventFolder.openReadOnly(path)) {
                    assertTrue(EcoreUtil.equals(folder.event(), reader.event()), "step " + step);
                }
            }
        }
    }

    @Test
    void powerFailsAtEveryStepOfANewEvent() throws IOException {
        for (int step = 1;; step++) {
            Path folder = temp.resolve("new" + step);
            FailingSteps disk = FailingSteps.powerFailsAt(step, step);
            try {
                EventFolder.create(folder, EcoreUtil.copy(example), disk).close();
                break;
            } catch (FailingSteps.PowerFailure e) {
                if (Files.exists(folder.resolve(SaveJournal.FOLDER).resolve("commit"))
                        || Files.exists(folder.resolve(Layout.EVENT))) {
                    reopen(folder);
                    assertEquals(before, FolderContent.of(folder), "step " + step);
                } else {
                    EventFolder.create(folder, EcoreUtil.copy(example), FailingSteps.never()).close();
                }
            }
        }
    }

    @Test
    void damagedJournalIsNamedAndNothingIsTouched() throws IOException {
        Path folder = freshFolder();
        // Fail right after the save counts: its list is there, all new files wait.
        int step = 1;
        while (!Files.exists(folder.resolve(SaveJournal.FOLDER).resolve("commit"))) {
            folder = freshFolder();
            Path each = folder;
            FailingSteps disk = FailingSteps.powerFailsAt(++step, 0);
            assertThrows(FailingSteps.PowerFailure.class, () -> save(each, disk));
        }
        Path list = folder.resolve(SaveJournal.FOLDER).resolve("commit");
        String good = Files.readString(list);
        Map<String, String> untouched = FolderContent.of(folder);
        Path damaged = folder;
        for (String bad : new String[] {"", good.substring(0, good.length() / 2), good.replace("plan.xmi", "../plan.xmi"),
            good.replace("delete sites", "delete /etc"), good + "end 1\n"}) {
            Files.writeString(list, bad);
            EventFolderException e = assertThrows(EventFolderException.class, () -> EventFolder.open(damaged));
            assertTrue(e.what().contains("interrupted save is damaged"), e.getMessage());
            assertEquals(untouched, FolderContent.of(folder));
        }
        Files.writeString(list, good);
        Files.writeString(folder.resolve(SaveJournal.FOLDER).resolve("new/event.straddle"), "rotten");
        EventFolderException e = assertThrows(EventFolderException.class, () -> EventFolder.open(damaged));
        assertEquals("event.straddle", e.file());
        assertEquals(untouched, FolderContent.of(folder));
    }

    @Test
    void aSaveAsThatFailsLeavesBothFoldersUsable() throws IOException {
        Path path = freshFolder();
        Files.createDirectories(path.resolve("photos"));
        Files.writeString(path.resolve("photos/x.jpg"), "picture");
        for (int step = 1;; step++) {
            Path target = temp.resolve("target" + step);
            FailingSteps disk = FailingSteps.diskFailsAt(step);
            boolean done = false;
            try (EventFolder folder = EventFolder.open(path, disk)) {
                folder.event().setName("Elsewhere");
                folder.saveAs(target);
                done = true;
            } catch (EventFolderException e) {
                reopen(path);
            }
            assertEquals(before, withoutPhoto(FolderContent.of(path)));
            if (done && disk.taken() < step) {
                try (EventFolder there = EventFolder.open(target)) {
                    assertEquals("Elsewhere", there.event().getName());
                }
                assertEquals("picture", Files.readString(target.resolve("photos/x.jpg")));
                break;
            }
        }
    }

    private static Map<String, String> withoutPhoto(Map<String, String> content) {
        content.remove("photos/x.jpg");
        return content;
    }

    @Test
    void nothingIsLeftBehindByASave() throws IOException {
        Path folder = freshFolder();
        save(folder, new DiskSteps());
        try (Stream<Path> inside = Files.list(folder)) {
            assertEquals(1, inside.filter(each -> each.getFileName().toString().startsWith(".")).count(), "the lock file");
        }
    }

    /** A file put beside the element sets: there as a whole or not at all, and the event as it was. */
    @Test
    void powerFailsAtEveryStepOfPuttingAFile() throws IOException {
        Map<String, String> with = new TreeMap<>(before);
        with.put("elements/turning.txt", "newer");
        for (int step = 1;; step++) {
            Path path = freshFolder();
            try (EventFolder folder = EventFolder.open(path, FailingSteps.never())) {
                folder.putElementsFile("turning.txt", "older".getBytes(StandardCharsets.UTF_8));
            }
            Map<String, String> old = FolderContent.of(path);
            boolean failed = false;
            try (EventFolder folder = EventFolder.open(path, FailingSteps.powerFailsAt(step, step))) {
                folder.event().setName("Changed, not saved");
                folder.putElementsFile("turning.txt", "newer".getBytes(StandardCharsets.UTF_8));
            } catch (FailingSteps.PowerFailure e) {
                failed = true;
            }
            reopen(path);
            Map<String, String> found = FolderContent.of(path);
            assertTrue(found.equals(with) || failed && found.equals(old), "step " + step);
            if (!failed) {
                return;
            }
        }
    }
}
