package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An event on a disk that may only be read: it is looked at, a save is refused in words, and nothing on the disk changes.
 * Permissions do not bind an administrator, so the disk is played by {@link ReadOnlySteps} for everybody, and is a real one
 * besides: a folder without permissions, or, for an administrator, a small disk that is mounted to be read.
 */
class ReadOnlyDiskTest {

    private static final FileTime LONG_AGO = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));

    @TempDir
    Path temp;
    private Path folder;

    @BeforeEach
    void anEvent() throws IOException {
        folder = temp.resolve("event");
        EventFolder.create(folder, Example.event(), FailingSteps.never()).close();
        Files.delete(folder.resolve(EventLock.FILE));
    }

    /** Leaves a save behind that counts and of which no file is in its place yet. */
    private static void interruptASave(Path event) throws EventFolderException {
        for (int step = 1; !Files.exists(event.resolve(SaveJournal.FOLDER).resolve("commit")); step++) {
            FailingSteps disk = FailingSteps.powerFailsAt(step, 0);
            assertThrows(FailingSteps.PowerFailure.class, () -> rename(event, disk));
        }
    }

    private static void rename(Path event, FileSteps disk) throws EventFolderException {
        try (EventFolder open = EventFolder.open(event, disk)) {
            open.event().setName("Changed");
            open.save();
        }
    }

    /** Every file, hidden ones too, but the lock. */
    private static Map<String, String> all(Path event) throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.walk(event)) {
            for (Path file : files.filter(Files::isRegularFile).filter(file -> !file.endsWith(EventLock.FILE)).toList()) {
                content.put(event.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return content;
    }

    private static void assertInWords(EventFolderException refused, String... parts) {
        assertTrue(refused.getMessage().lines().count() <= 2 && !refused.getMessage().contains("Exception"), refused.getMessage());
        for (String part : parts) {
            assertTrue(refused.getMessage().contains(part), part + " is not in: " + refused.getMessage());
        }
    }

    @Test
    void aSaveIsRefusedAndTheEditsAreStillThere() throws IOException {
        Map<String, String> before = all(folder);
        try (EventFolder open = EventFolder.open(folder, new ReadOnlySteps())) {
            open.event().setName("Changed");
            open.event().getSites().remove(1);
            assertInWords(assertThrows(EventFolderException.class, open::save), "could not be saved", ReadOnlySteps.REASON,
                    "its files are as they were", "save to another folder");
            assertEquals("Changed", open.event().getName());
            assertInWords(assertThrows(EventFolderException.class,
                    () -> open.putElementsFile("turning.txt", new byte[] {1})), ReadOnlySteps.REASON);
        }
        assertEquals(before, all(folder));
    }

    @Test
    void noEventIsMadeThere() {
        Path fresh = temp.resolve("fresh");
        assertInWords(assertThrows(EventFolderException.class,
                () -> EventFolder.create(fresh, Example.event(), new ReadOnlySteps())), ReadOnlySteps.REASON);
        assertFalse(Files.exists(fresh));
    }

    @Test
    void anInterruptedSaveIsShownAndNotFinished() throws IOException {
        interruptASave(folder);
        Map<String, String> before = all(folder);
        assertInWords(assertThrows(EventFolderException.class, () -> EventFolder.open(folder, new ReadOnlySteps())),
                "an interrupted save could not be finished", ReadOnlySteps.REASON);
        assertEquals(before, all(folder));
        try (EventFolder looked = EventFolder.openReadOnly(folder)) {
            assertEquals("Changed", looked.event().getName(), "the save counts");
        }
        assertEquals(before, all(folder));
        // Where it may be written, the same save is finished.
        EventFolder.open(folder, FailingSteps.never()).close();
        assertFalse(Files.exists(folder.resolve(SaveJournal.FOLDER)));
        assertFalse(before.equals(all(folder)));
    }

    /** Times tell what is written and removed again. */
    @Test
    void lookingTouchesNothing() throws IOException {
        interruptASave(folder);
        Files.deleteIfExists(folder.resolve(EventLock.FILE));
        List<Path> places;
        try (Stream<Path> found = Files.walk(folder)) {
            places = found.toList();
        }
        for (Path place : places) {
            Files.setLastModifiedTime(place, LONG_AGO);
        }
        lookAt(folder);
        for (Path place : places) {
            assertEquals(LONG_AGO, Files.getLastModifiedTime(place), place.toString());
        }
    }

    /** Opens to look, and tries what such an event refuses. */
    private static void lookAt(Path event) throws EventFolderException {
        try (EventFolder looked = EventFolder.openReadOnly(event)) {
            assertTrue(looked.isReadOnly());
            assertEquals("Changed", looked.event().getName());
            looked.event().setName("Changed again");
            assertInWords(assertThrows(EventFolderException.class, looked::save), "opened only to look at it",
                    "Save it to another folder");
        }
    }

    private void assertOnlyRead(Path event, String reason) throws IOException {
        Map<String, String> before = all(event);
        assertInWords(assertThrows(EventFolderException.class, () -> EventFolder.open(event)), reason,
                "copy the event folder to a place of your own");
        lookAt(event);
        assertEquals(before, all(event));
        Path copy = temp.resolve("copy");
        try (EventFolder looked = EventFolder.openReadOnly(event)) {
            looked.saveAs(copy);
        }
        assertEquals(before, all(event));
        try (EventFolder own = EventFolder.open(copy)) {
            assertTrue(EcoreUtil.equals(own.event(), EventFolder.openReadOnly(event).event()));
        }
    }

    @Test
    void aFolderWithoutPermissionToWrite() throws IOException {
        assumeTrue(Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null, "this system has other permissions");
        interruptASave(folder);
        Files.deleteIfExists(folder.resolve(EventLock.FILE));
        try {
            allow("r-xr-xr-x");
            assumeFalse(Files.isWritable(folder), "permissions do not bind this user");
            assertOnlyRead(folder, "AccessDenied");
        } finally {
            allow("rwxrwxrwx");
        }
    }

    /** Innermost first or last makes no difference: a folder that may be entered may be walked. */
    private void allow(String permissions) throws IOException {
        try (Stream<Path> places = Files.walk(folder)) {
            for (Path place : places.toList()) {
                Files.setPosixFilePermissions(place, PosixFilePermissions.fromString(permissions));
            }
        }
    }

    @Test
    void aDiskThatIsMountedToBeRead() throws Exception {
        Path disk = Files.createDirectory(temp.resolve("disk"));
        assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=3m", "straddle-test", disk.toString()) == 0, "a small disk takes root");
        try {
            Path event = disk.resolve("event");
            EventFolder.create(event, Example.event(), FailingSteps.never()).close();
            interruptASave(event);
            assumeTrue(run("mount", "-o", "remount,ro", disk.toString()) == 0, "this system remounts no disk");
            assertOnlyRead(event, ReadOnlySteps.REASON);
        } finally {
            assertEquals(0, run("umount", disk.toString()));
        }
    }

    private static int run(String... words) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        } catch (IOException noSuchProgram) {
            return -1;
        }
    }
}
