package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.model.Photo;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;

/**
 * An event folder that came from somebody else, by archive or version control, with links, pipes and lists of saves in
 * it: nothing outside of it is read, written, locked or removed, and nothing waits for ever.
 */
class ForeignFolderTest {

    @TempDir
    Path temp;
    private Path event;
    private Path outside;

    @BeforeEach
    void receive() throws IOException {
        event = temp.resolve("event");
        EventFolder.create(event, Example.event(), FailingSteps.never()).close();
        Files.delete(event.resolve(EventLock.FILE));
        outside = Files.createDirectory(temp.resolve("outside"));
        Files.writeString(outside.resolve("keepme"), "mine");
        Files.writeString(outside.resolve("authorized_keys"), "mine");
        System.setProperty(UserFolder.PROPERTY, temp.resolve("user").toString());
    }

    @AfterEach
    void nothingOutsideChanged() {
        System.clearProperty(UserFolder.PROPERTY);
        assertEquals(Map.of("keepme", "mine", "authorized_keys", "mine"), FolderContent.of(outside));
    }

    private EventFolderException refused(Executable work) {
        EventFolderException e = assertTimeoutPreemptively(Duration.ofSeconds(30),
                () -> assertThrows(EventFolderException.class, work));
        assertTrue(e.getMessage().lines().count() <= 2, e.getMessage());
        return e;
    }

    private void refusedToOpen(String words) {
        Map<String, String> before = FolderContent.of(event);
        for (EventFolderException e : List.of(refused(() -> EventFolder.open(event)), refused(() -> EventFolder.openReadOnly(event)))) {
            assertTrue(e.getMessage().contains(words), e.getMessage());
        }
        assertEquals(before, FolderContent.of(event));
    }

    private void link(String name, Path target) throws IOException {
        Path place = event.resolve(name);
        Files.createDirectories(place.getParent());
        if (Files.isDirectory(place)) {
            for (Path each : Files.list(place).toList()) {
                Files.delete(each);
            }
        }
        Files.deleteIfExists(place);
        Files.createSymbolicLink(place, target);
    }

    private void pipe(String name) throws Exception {
        Path place = event.resolve(name);
        Files.createDirectories(place.getParent());
        Files.deleteIfExists(place);
        Process made;
        try {
            made = new ProcessBuilder("mkfifo", place.toString()).start();
        } catch (IOException e) {
            assumeTrue(false, "no pipes here");
            return;
        }
        assertEquals(0, made.waitFor());
    }

    /** A list as somebody who knows the form of it would write one. */
    private void journal(String last, String... lines) throws IOException {
        Path folder = Files.createDirectories(event.resolve(SaveJournal.FOLDER));
        Files.writeString(folder.resolve("commit"), "straddle save 2\n" + String.join("\n", lines) + "\nend " + lines.length + "\n" + last);
    }

    private static String digest(String text) throws IOException {
        return Digest.of(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private void staged(String name, String text) throws IOException {
        Path file = event.resolve(SaveJournal.FOLDER).resolve("new").resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void aListOfASaveDoesNotReachThroughALink() throws IOException {
        link("layers", outside);
        staged("layers/authorized_keys", "theirs");
        journal("seal key 00\n", "put " + digest("theirs") + " layers/authorized_keys", "delete layers/keepme");
        refusedToOpen("layers: this is a link");
    }

    @Test
    void aListOfASaveThatNobodyHereMadeIsRefusedWithAWord() throws IOException {
        staged("layers/roads.geojson", "theirs");
        for (String seal : new String[] {"seal key 00\n", "seal place 1\n", "seal place \n", "seal \n"}) {
            journal(seal, "put " + digest("theirs") + " layers/roads.geojson", "delete sites/cairn.xmi");
            refusedToOpen("an interrupted save came with this folder");
        }
        assertTrue(Files.exists(event.resolve("sites/cairn.xmi")));
    }

    @Test
    void aListWithoutASealIsDamaged() throws IOException {
        staged("layers/roads.geojson", "theirs");
        journal("", "put " + digest("theirs") + " layers/roads.geojson");
        refusedToOpen("the list of an interrupted save is damaged");
    }

    @Test
    void aSaveThatWasInterruptedElsewhereIsKnownByItsKey() throws IOException {
        interrupt();
        System.setProperty(UserFolder.PROPERTY, temp.resolve("somebody else").toString());
        refusedToOpen("an interrupted save came with this folder");
        System.setProperty(UserFolder.PROPERTY, temp.resolve("user").toString());
        Path moved = temp.resolve("moved");
        Files.move(event, moved);
        try (EventFolder folder = EventFolder.open(moved, FailingSteps.never())) {
            assertEquals("Changed", folder.event().getName());
        }
    }

    @Test
    void whereNoKeyCanBeKeptTheFolderItselfTells() throws IOException {
        Files.writeString(temp.resolve("user"), "a file where the folder should be");
        interrupt();
        try (EventFolder folder = EventFolder.open(event, FailingSteps.never())) {
            assertEquals("Changed", folder.event().getName());
        }
        assertEquals("a file where the folder should be", Files.readString(temp.resolve("user")));
    }

    /** Leaves a save that counts and is not yet in place. */
    private void interrupt() throws IOException {
        for (int step = 1; !Files.exists(event.resolve(SaveJournal.FOLDER).resolve("commit")); step++) {
            try (EventFolder folder = EventFolder.open(event, FailingSteps.powerFailsAt(step, 0))) {
                folder.event().setName("Changed");
                assertThrows(FailingSteps.PowerFailure.class, folder::save);
            } catch (FailingSteps.PowerFailure e) {
                // Even before there was something to save.
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"operators", "teams", "kits", "sites", "elements", "layers", "photos"})
    void foldersThatAreLinksAreRefused(String name) throws IOException {
        link(name, outside);
        refusedToOpen(name + ": this is a link");
    }

    @ParameterizedTest
    @ValueSource(strings = {"event.straddle", "plan.xmi", "sites/cairn.xmi", ".straddle-save/commit"})
    void filesThatAreLinksOrPipesAreRefused(String name) throws Exception {
        link(name, outside.resolve("keepme"));
        refusedToOpen(name + ": this is a link");
        pipe(name);
        refusedToOpen(name + ": this is not a plain file");
    }

    @Test
    void theFolderOfASaveMayBeNoLinkAndHoldNone() throws IOException {
        link(SaveJournal.FOLDER, outside);
        refusedToOpen(SaveJournal.FOLDER + ": this is a link");
        Files.delete(event.resolve(SaveJournal.FOLDER));
        link(".straddle-save/new", outside);
        EventFolder.open(event).close();
        assertFalse(Files.exists(event.resolve(SaveJournal.FOLDER)), "thrown away, and what the link leads to stays");
    }

    @Test
    void theLockMayBeNoLinkAndNoPipe() throws Exception {
        link(EventLock.FILE, outside.resolve("new"));
        assertTrue(refused(() -> EventFolder.open(event)).getMessage().contains(EventLock.FILE + ": this is a link"));
        pipe(EventLock.FILE);
        assertTrue(refused(() -> EventFolder.open(event)).getMessage().contains("not a plain file"));
        Files.delete(event.resolve(EventLock.FILE));
        Files.createLink(event.resolve(EventLock.FILE), outside.resolve("keepme"));
        assertTrue(refused(() -> EventFolder.open(event)).getMessage().contains("second name"));
        Files.delete(event.resolve(EventLock.FILE));
        Files.createDirectory(event.resolve(EventLock.FILE));
        assertTrue(refused(() -> EventFolder.open(event)).getMessage().contains("not a plain file"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"elements", "layers", "photos", "sites"})
    void aLinkThatComesLaterIsRefusedBeforeAnythingIsWritten(String name) throws IOException {
        try (EventFolder folder = EventFolder.open(event)) {
            folder.event().getBirds().get(0).getElementSets().add(Example.elements(folder.addElementsFile("week.tle", new byte[] {'1'})));
            Layer layer = Fresh.layer();
            layer.setFile(folder.addLayer("roads.gpx", "<gpx/>".getBytes()));
            folder.event().getLayers().add(layer);
            Photo photo = StraddleFactory.eINSTANCE.createPhoto();
            photo.setFile(folder.addPhoto("a.jpg", new byte[] {'2'}));
            Visit visit = Fresh.visit();
            visit.getPhotos().add(photo);
            folder.event().getSites().get(0).getVisits().add(visit);
            folder.event().getSites().get(0).setName("Changed");
            link(name, outside);
            Map<String, String> before = FolderContent.of(event);
            EventFolderException e = refused(folder::save);
            assertEquals(name, e.file(), e.getMessage());
            assertEquals(before, FolderContent.of(event));
        }
    }

    @Test
    void keptFilesThatLeadElsewhereAreNotThere() throws Exception {
        link("photos/link.jpg", outside.resolve("keepme"));
        pipe("photos/pipe.jpg");
        link("elements/finals2000A.data", outside.resolve("keepme"));
        Files.writeString(event.resolve("photos/real.jpg"), "picture");
        try (EventFolder folder = EventFolder.openReadOnly(event)) {
            for (String name : List.of("link.jpg", "pipe.jpg", "../../outside/keepme", "../event.straddle", "/etc/passwd", "")) {
                assertFalse(folder.photo(name).exists(), name);
                assertThrows(IOException.class, () -> folder.photo(name).open(), name);
            }
            assertEquals(List.of(), folder.elements().files());
            try (var in = folder.photo("real.jpg").open()) {
                assertArrayEquals("picture".getBytes(), in.readAllBytes());
            }
            folder.saveAs(temp.resolve("copy"));
        }
        assertEquals(List.of("real.jpg"), List.of(temp.resolve("copy/photos").toFile().list()), "a copy carries no link along");
    }

    @Test
    void aFolderThatIsHeldOpenStaysTheSameOne() throws IOException {
        Path inner = Files.createDirectory(temp.resolve("inner"));
        Files.writeString(inner.resolve("keepme"), "theirs");
        try (OpenFolder around = OpenFolder.of(temp); OpenFolder held = around.enter("inner")) {
            assumeTrue(held.isHeld(), "this system has no open folders");
            Files.move(inner, temp.resolve("moved"));
            Files.createSymbolicLink(inner, outside);
            held.open("new", Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)).close();
            held.delete("keepme", false);
            assertThrows(IOException.class, () -> around.enter("inner"));
        }
        assertEquals(List.of("new"), FolderContent.names(temp.resolve("moved")));
    }

    @Test
    void namesThatLeadOutAreNoNames() {
        EventTree tree = new EventTree(event);
        for (String name : List.of("..", "../x", "a/../b", "/etc", "a//b", "a/", ".", "a/./b", "a\0b")) {
            assertThrows(IllegalArgumentException.class, () -> tree.at(name), name);
        }
        assertEquals("a/.b/..c", tree.at("a/.b/..c").name());
    }

    @Test
    void theEventItselfMayBeReachedByALink() throws IOException {
        Path link = Files.createSymbolicLink(temp.resolve("shortcut"), event);
        try (EventFolder folder = EventFolder.open(link)) {
            folder.event().setName("Changed");
            folder.save();
            EventFolderException e = refused(() -> EventFolder.open(event));
            assertTrue(e.getMessage().contains("already open"), e.getMessage());
            assertTrue(EcoreUtil.equals(folder.event().getBases().get(0), EventFolder.openReadOnly(event).event().getBases().get(0)));
        }
    }
}
