package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;

class EventFolderTest {

    @TempDir
    Path temp;
    private Path path;
    private EventFolder folder;
    private Event event;

    @BeforeEach
    void createEvent() throws IOException {
        path = temp.resolve("mid summer é");
        event = Example.event();
        folder = EventFolder.create(path, event);
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private EventFolder reopened() throws IOException {
        folder.close();
        folder = EventFolder.open(path);
        return folder;
    }

    private String text(String name) throws IOException {
        return Files.readString(path.resolve(name));
    }

    private static void assertSameContent(Event expected, Event actual) {
        assertTrue(EcoreUtil.equals(Snapshot.of(expected), Snapshot.of(actual)));
    }

    @Test
    void everythingComesBack() throws IOException {
        event.getSites().get(0).setName("tab\there, line\nbreak, <&\"'> ‑ 🛰");
        event.getSites().get(0).getSquares().add("carriage\rreturn\n");
        folder.save();
        assertSameContent(event, reopened().event());
    }

    @Test
    void oneFileForEachThingThatOnePersonEdits() {
        assertEquals(List.of("birds.xmi", "event.straddle", "kits/grey-box.xmi", "operators/olafur-th-aesir-demo.xmi",
                "plan.xmi", "sites/cairn.xmi", "sites/long-gravel-bank.xmi", "teams/east.xmi"), FolderContent.names(path));
        assertEquals("sites/cairn.xmi", folder.fileOf(event.getSites().get(1)));
    }

    @Test
    void sameModelSameBytes() throws IOException {
        Map<String, String> before = FolderContent.of(path);
        Path copy = temp.resolve("copy");
        reopened().saveAs(copy);
        assertEquals(before, FolderContent.of(copy));
        assertFalse(before.values().stream().anyMatch(each -> each.contains("\r")));
    }

    @Test
    void onlyTheChangedFileIsWritten() throws IOException {
        FileTime old = FileTime.from(Instant.parse("2001-01-01T00:00:00Z"));
        for (String name : FolderContent.names(path)) {
            Files.setLastModifiedTime(path.resolve(name), old);
        }
        reopened().event().getSites().get(0).setAltitudeM(7);
        folder.save();
        List<String> written = new ArrayList<>();
        for (String name : FolderContent.names(path)) {
            if (!Files.getLastModifiedTime(path.resolve(name)).equals(old)) {
                written.add(name);
            }
        }
        assertEquals(List.of("sites/long-gravel-bank.xmi"), written);
    }

    @Test
    void renamingASiteKeepsItsFile() throws IOException {
        event.getSites().get(1).setName("Tall cairn");
        folder.save();
        assertTrue(text("sites/cairn.xmi").contains("Tall cairn"));
        assertFalse(Files.exists(path.resolve("sites/tall-cairn.xmi")));
    }

    @Test
    void sitesOfOneNameGetFilesOfTheirOwn() throws IOException {
        event.getSites().add(Example.site("CAIRN"));
        event.getSites().add(Example.site("東の石"));
        event.getSites().add(Example.site("con"));
        folder.save();
        assertEquals(List.of("sites/cairn-2.xmi", "sites/cairn.xmi", "sites/con-site.xmi",
                "sites/long-gravel-bank.xmi", "sites/site.xmi"),
                FolderContent.names(path).stream().filter(each -> each.startsWith("sites")).toList());
        assertSameContent(event, reopened().event());
    }

    @Test
    void removedSiteTakesItsFileAlongAndUndoBringsItBack() throws IOException {
        Site cairn = event.getSites().remove(1);
        folder.save();
        assertFalse(Files.exists(path.resolve("sites/cairn.xmi")));
        event.getSites().add(cairn);
        folder.save();
        assertTrue(text("sites/cairn.xmi").contains("Cairn"));
        assertSameContent(event, reopened().event());
    }

    @Test
    void removedBirdLeavesTheBirdsFile() throws IOException {
        event.getBirds().remove(1);
        folder.save();
        assertFalse(text("birds.xmi").contains("Fulmar"));
        assertSameContent(event, reopened().event());
    }

    @Test
    void lastBirdTakesTheFileAlong() throws IOException {
        event.getPlan().getStops().clear();
        event.getBirds().clear();
        folder.save();
        assertFalse(Files.exists(path.resolve("birds.xmi")));
        assertSameContent(event, reopened().event());
    }

    @Test
    void referencesAreRelativeSoTheFolderCanMove() throws IOException {
        assertTrue(text("teams/east.xmi").contains("../operators/olafur-th-aesir-demo.xmi#"), text("teams/east.xmi"));
        folder.close();
        Path moved = temp.resolve("moved");
        Files.move(path, moved);
        try (EventFolder there = EventFolder.open(moved)) {
            assertSameContent(event, there.event());
        }
    }

    @Test
    void saveAsTakesTheKeptFilesAlongAndGoesOnThere() throws IOException {
        Files.createDirectories(path.resolve("layers/own"));
        Files.writeString(path.resolve("layers/own/roads.geojson"), "{}");
        Files.writeString(path.resolve("notes.txt"), "stays");
        Map<String, String> before = FolderContent.of(path);
        Path copy = temp.resolve("a/b/copy");
        event.setName("Renamed");
        folder.saveAs(copy);
        assertEquals(before, FolderContent.of(path));
        assertEquals("{}", Files.readString(copy.resolve("layers/own/roads.geojson")));
        assertFalse(Files.exists(copy.resolve("notes.txt")));
        assertEquals(copy, folder.path());
        EventFolder.open(path).close();
        event.setName("Renamed again");
        folder.save();
        folder.close();
        try (EventFolder there = EventFolder.open(copy)) {
            assertEquals("Renamed again", there.event().getName());
        }
    }

    @Test
    void saveAsRefusesAFolderThatHoldsSomething() throws IOException {
        Path full = Files.createDirectory(temp.resolve("full"));
        Files.writeString(full.resolve("letter.txt"), "mine");
        assertThrows(EventFolderException.class, () -> folder.saveAs(full));
        assertThrows(EventFolderException.class, () -> folder.saveAs(path.resolve("sites/deeper")));
        assertThrows(EventFolderException.class, () -> EventFolder.create(path, Example.event()));
        assertEquals(path, folder.path());
        folder.save();
    }

    @Test
    void importedFileWaitsForTheSaveThatNamesIt() throws IOException {
        byte[] bytes = "# demo\r\n".getBytes();
        String file = folder.addElementsFile("C:\\weekly\\Week 25.TLE", bytes);
        assertEquals("week-25.tle", file);
        folder.save();
        assertFalse(Files.exists(folder.path().resolve("elements")), "no element set names it: the import was undone");
        event.getBirds().get(0).getElementSets().add(Example.elements(file));
        folder.save();
        assertArrayEquals(bytes, Files.readAllBytes(folder.path().resolve("elements").resolve(file)));
        assertEquals(file, folder.addElementsFile("week 25.tle", bytes), "same content, same file");
        assertEquals("week-25-2.tle", folder.addElementsFile("week 25.tle", new byte[] {'2'}));
        assertEquals("week-25-3.tle", folder.addElementsFile("week 25.tle", new byte[] {'3'}));
    }

    @Test
    void layerComesAndGoesWithItsObject() throws IOException {
        byte[] bytes = "{\"type\":\"LineString\"}".getBytes();
        Layer layer = Fresh.layer();
        layer.setFile(folder.addLayer("Ring Road.GeoJSON", bytes));
        assertEquals("ring-road.geojson", layer.getFile());
        folder.save();
        assertFalse(Files.exists(folder.path().resolve("layers")), "no layer names it: the import was undone");
        assertTrue(folder.layer(layer.getFile()).onDisk().isEmpty());
        event.getLayers().add(layer);
        folder.save();
        Path file = folder.path().resolve("layers").resolve(layer.getFile());
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertEquals(Optional.of(file), folder.layer(layer.getFile()).onDisk());
        event.getLayers().remove(layer);
        assertArrayEquals(bytes, folder.layer(layer.getFile()).open().readAllBytes());
        folder.save();
        assertFalse(Files.exists(file), "the layer was removed");
        assertArrayEquals(bytes, folder.layer(layer.getFile()).open().readAllBytes());
        event.getLayers().add(layer);
        folder.save();
        assertArrayEquals(bytes, Files.readAllBytes(file), "the removal was undone");
        assertSameContent(event, reopened().event());
    }

    @Test
    void saveAsLeavesRemovedLayersBehindAndTakesWaitingOnesAlong() throws IOException {
        Layer old = layer("old.gpx");
        event.getLayers().add(old);
        folder.save();
        event.getLayers().remove(old);
        event.getLayers().add(layer("new.gpx"));
        Path copy = temp.resolve("copy");
        folder.saveAs(copy);
        assertEquals(List.of("new.gpx"), List.of(copy.resolve("layers").toFile().list()));
        assertEquals(List.of("old.gpx"), List.of(path.resolve("layers").toFile().list()), "the old folder stays as it was");
        event.getLayers().add(old);
        folder.save();
        assertEquals("<gpx>old.gpx</gpx>", Files.readString(copy.resolve("layers/old.gpx")), "the removal was undone");
    }

    private Layer layer(String file) throws EventFolderException {
        Layer layer = Fresh.layer();
        layer.setFile(folder.addLayer(file, ("<gpx>" + file + "</gpx>").getBytes()));
        return layer;
    }

    @Test
    void layerThatLeadsOutOfTheFolderIsNotThere() throws IOException {
        Files.writeString(temp.resolve("secret.gpx"), "mine");
        Files.createDirectories(folder.path().resolve("layers"));
        Files.createSymbolicLink(folder.path().resolve("layers").resolve("link.gpx"), temp.resolve("secret.gpx"));
        for (String name : List.of("../../secret.gpx", "link.gpx", "none.gpx", "/etc/passwd", "")) {
            assertFalse(folder.layer(name).exists(), name);
            assertThrows(IOException.class, () -> folder.layer(name).open(), name);
        }
        Layer hostile = Fresh.layer();
        hostile.setFile("../../secret.gpx");
        event.getLayers().add(hostile);
        folder.save();
        event.getLayers().remove(hostile);
        folder.save();
        assertTrue(Files.exists(temp.resolve("secret.gpx")));
    }

    @Test
    void photoIsNamedByItsContent() throws IOException {
        // SHA-256 of "abc": FIPS 180-4 example.
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad.jpg",
                folder.addPhoto("Holiday.JPG", "abc".getBytes()));
    }

    @Test
    void objectsWithoutOrWithABorrowedIdGetOneOfTheirOwn() throws IOException {
        Site pasted = EcoreUtil.copy(event.getSites().get(0));
        event.getSites().add(pasted);
        event.getOperators().get(0).setId(null);
        folder.save();
        assertNotEquals(event.getSites().get(0).getId(), pasted.getId());
        assertSameContent(event, reopened().event());
    }

    @Test
    void referenceToSomethingRemovedIsRefusedBeforeAnythingIsWritten() {
        Map<String, String> before = FolderContent.of(path);
        event.getSites().remove(0);
        event.setName("Changed");
        EventFolderException e = assertThrows(EventFolderException.class, folder::save);
        assertEquals("Stop of Plan of Event Changed", e.file());
        assertTrue(e.what().contains("Site Long Gravel Bank"), e.what());
        assertEquals(before, FolderContent.of(path));
    }

    @Test
    void characterThatXmlCannotCarryIsNamed() {
        event.getSites().get(0).setName("bell\u0007");
        EventFolderException e = assertThrows(EventFolderException.class, folder::save);
        assertTrue(e.what().contains("U+0007, character 5"), e.what());
        event.getSites().get(0).setName("half a pair \ud83d");
        assertThrows(EventFolderException.class, folder::save);
    }

    @Test
    void whatAnotherProgramChangedIsNotOverwritten() throws IOException {
        Files.writeString(path.resolve("sites/cairn.xmi"), text("sites/cairn.xmi").replace("Cairn", "Stones"));
        event.getSites().get(0).setAltitudeM(3);
        folder.save();
        event.getSites().get(1).setAltitudeM(3);
        EventFolderException e = assertThrows(EventFolderException.class, folder::save);
        assertEquals("sites/cairn.xmi", e.file());
        assertTrue(text("sites/cairn.xmi").contains("Stones"));
    }

    @Test
    void whatAnotherProgramRemovedIsWrittenAgain() throws IOException {
        Files.delete(path.resolve("sites/cairn.xmi"));
        folder.save();
        assertSameContent(event, reopened().event());
    }

    /** A folder of its files alone, in the old place, would look saved and lack what was brought in. */
    @Test
    void aFolderThatIsGoneIsNotMadeAnew(@TempDir Path elsewhere) throws IOException {
        Path moved = elsewhere.resolve("moved");
        Files.move(path, moved);
        folder.event().setName("Edited meanwhile");
        EventFolderException refused = assertThrows(EventFolderException.class, folder::save);
        assertTrue(refused.getMessage().contains(path.toString()) && refused.getMessage().contains("is gone"), refused.getMessage());
        assertFalse(Files.exists(path));
        Files.move(moved, path);
        folder.save();
        try (EventFolder again = EventFolder.openReadOnly(path)) {
            assertEquals("Edited meanwhile", again.event().getName());
        }
    }

    @Test
    void broughtFileDoesNotReplaceOneOfAnotherProgram() throws IOException {
        String file = folder.addElementsFile("week.tle", new byte[] {'1'});
        event.getBirds().get(0).getElementSets().add(Example.elements(file));
        Files.createDirectories(folder.path().resolve("elements"));
        Files.writeString(folder.path().resolve("elements").resolve(file), "theirs");
        assertEquals("elements/week.tle", assertThrows(EventFolderException.class, folder::save).file());
        assertEquals("theirs", text("elements/week.tle"));
    }

    @Test
    void theSmallestEventIsOfTodaysFormat() throws IOException {
        Event smallest = EventFolder.rehearsed();
        assertTrue(smallest.getSites().isEmpty() && smallest.getFirstDay() != null);
        assertTrue(smallest.getPolicies() != null);
    }

    @Test
    void oneWriterAtATimeButReadersAnyTime() throws IOException {
        EventFolderException e = assertThrows(EventFolderException.class, () -> EventFolder.open(path));
        assertTrue(e.getMessage().contains("already open"), e.getMessage());
        try (EventFolder reader = EventFolder.openReadOnly(path)) {
            assertSameContent(event, reader.event());
            assertThrows(EventFolderException.class, reader::save);
            reader.saveAs(temp.resolve("own copy"));
            reader.event().setName("Own");
            reader.save();
        }
        folder.close();
        EventFolder.open(path).close();
    }

    @Test
    void anotherProcessIsKeptOutToo() throws Exception {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Path source = temp.resolve("Holder.java");
        Files.writeString(source, """
                import java.nio.channels.*; import java.nio.file.*;
                class Holder { public static void main(String[] a) throws Exception {
                    FileChannel c = FileChannel.open(Path.of(a[0]), StandardOpenOption.WRITE); c.lock();
                    System.out.println("held"); System.in.read(); } }
                """);
        folder.close();
        Process holder = new ProcessBuilder(java, source.toString(), path.resolve(EventLock.FILE).toString()).start();
        try {
            assertEquals("held", new String(holder.getInputStream().readNBytes(4)));
            // What the holder wrote of itself is told.
            Files.writeString(path.resolve(EventLock.FILE), "somebody else");
            EventFolderException e = assertThrows(EventFolderException.class, () -> EventFolder.open(path));
            assertTrue(e.getMessage().contains("(somebody else)"), e.getMessage());
        } finally {
            holder.destroyForcibly().waitFor();
        }
        folder = EventFolder.open(path);
    }

    /** On POSIX systems a lock falls when its process closes any channel to the file. */
    @Test
    void aRefusedSecondOpeningKeepsTheLock() throws Exception {
        assertThrows(EventFolderException.class, () -> EventFolder.open(path));
        assertEquals("kept out", inAnotherProcess("""
                System.out.print(FileChannel.open(file, StandardOpenOption.WRITE).tryLock(Long.MAX_VALUE - 1, 1, false) == null
                        ? "kept out" : "let in");
                """));
    }

    @Test
    void whoHoldsTheEventIsTold() throws Exception {
        String holder = Files.readString(path.resolve(EventLock.FILE));
        assertTrue(holder.contains(System.getProperty("user.name")), holder);
        assertTrue(holder.contains("process " + ProcessHandle.current().pid()), holder);
        folder.close();
        assertEquals("", Files.readString(path.resolve(EventLock.FILE)));
        folder = EventFolder.open(path);
    }

    private String inAnotherProcess(String statements) throws Exception {
        Path source = temp.resolve("Other.java");
        Files.writeString(source, "import java.nio.channels.*; import java.nio.file.*;\nclass Other { public static void main"
                + "(String[] a) throws Exception { Path file = Path.of(a[0]);\n" + statements + "} }");
        Process other = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), source.toString(),
                path.resolve(EventLock.FILE).toString()).start();
        String said = new String(other.getInputStream().readAllBytes());
        other.waitFor();
        return said;
    }

    @Test
    void theFilesOfTheEventAreItsResources() {
        assertSame(folder.resourceSet(), event.eResource().getResourceSet());
        assertSame(event, event.getSites().get(0).eContainer());
    }
}
