package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are damaged, foreign or hostile: named with their place, and nothing is touched. */
class DamagedFolderTest {

    private static final String SITE = "sites/cairn.xmi";

    @TempDir
    Path temp;
    private Path folder;

    @BeforeEach
    void createEvent() throws IOException {
        folder = temp.resolve("event");
        EventFolder.create(folder, Example.event(), FailingSteps.never()).close();
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private EventFolderException refused() {
        Map<String, String> before = FolderContent.of(folder);
        EventFolderException e = assertThrows(EventFolderException.class,
                () -> assertTimeoutPreemptively(Duration.ofSeconds(60), () -> EventFolder.open(folder)));
        assertEquals(before, FolderContent.of(folder), "nothing is touched");
        assertTrue(e.getMessage().lines().count() <= 2, e.getMessage());
        return e;
    }

    private EventFolderException refused(String file, int line, String words) {
        EventFolderException e = refused();
        assertEquals(file + " " + line, e.file() + " " + e.line(), e.getMessage());
        assertTrue(e.what().contains(words), e.getMessage());
        return e;
    }

    /** Line from 1 of the first occurrence. */
    private int lineOf(String name, String words) throws IOException {
        String all = text(name);
        return 1 + (int) all.substring(0, all.indexOf(words)).chars().filter(c -> c == '\n').count();
    }

    @Test
    void newerFormatIsRefusedWithAClearWord() throws IOException {
        write(SITE, text(SITE).replace("urn:straddle:model:4", "urn:straddle:model:5"));
        EventFolderException e = refused(SITE, lineOf(SITE, "<squares>") - 1, "written by a newer Straddle, format 5; this one reads up to 4");
        assertTrue(e.whatToDo().contains("at least as new"));
    }

    @Test
    void foreignXmlIsRefused() throws IOException {
        write("event.straddle", "<html/>");
        refused("event.straddle", 1, "not from Straddle");
        write("event.straddle", "<a:b xmlns:a='urn:other'/>");
        refused("event.straddle", 1, "unknown kind (urn:other)");
    }

    @Test
    void placeOfDamageIsNamed() throws IOException {
        String good = text(SITE);
        write(SITE, good.replace("</straddle:Site>", "</straddle:Sight>"));
        refused(SITE, (int) good.lines().count(), "not well-formed");
        write(SITE, good.replace("latitudeDeg=\"64.2\"", "latitudeDeg=\"north\""));
        EventFolderException e = refused(SITE, lineOf(SITE, "<squares>") - 1, "north");
        assertTrue(e.column() > 0, e.getMessage());
        write(SITE, good.replace("latitudeDeg", "latitude"));
        refused(SITE, lineOf(SITE, "<squares>") - 1, "latitude");
    }

    @Test
    void missingFileIsNamedWithTheReferenceToIt() throws IOException {
        Files.delete(folder.resolve(SITE));
        refused("event.straddle", lineOf("event.straddle", SITE), "refers to " + SITE + ", which is missing");
    }

    @Test
    void lostObjectIsNamedWithTheReferenceToIt() throws IOException {
        write(SITE, text(SITE).replaceAll("\\bid=\"[^\"]*\"", "id=\"other\""));
        refused("event.straddle", lineOf("event.straddle", SITE), "which is not there");
    }

    @Test
    void lostObjectOfTheSameFileIsNamed() throws IOException {
        write("kits/grey-box.xmi", text("kits/grey-box.xmi").replaceAll("spareFor=\"[^\"]*\"", "spareFor=\"nothing\""));
        refused("kits/grey-box.xmi", lineOf("kits/grey-box.xmi", "nothing"), "nothing");
    }

    @Test
    void twinsAreNamed() throws IOException {
        write("sites/copy.xmi", text(SITE));
        write("event.straddle", text("event.straddle").replaceFirst("(?s)(<sites\\s+href=\"sites/)cairn(.*?/>)", "$1cairn$2$1copy$2"));
        assertTrue(refused().what().contains("second time"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../outside.xmi", "/etc/passwd", "http://localhost:1/x.xmi", "file:/etc/passwd", "sites/../../x.xmi",
        "jar:file:/x.jar!/x", "elements/x.tle", "sites/%2e%2e/x.xmi", "//host/share/x.xmi", "platform:/plugin/x", "::"})
    void referencesOutOfTheFolderAreRefused(String target) throws IOException {
        write("event.straddle", text("event.straddle").replace(SITE, target));
        assertTrue(refused("event.straddle", lineOf("event.straddle", "href=\"" + target + "#"), "").what()
                .contains("not a file of this event"));
    }

    @Test
    void documentTypesAndEntitiesAreRefused() throws IOException {
        String good = text(SITE);
        String declaration = good.substring(0, good.indexOf('\n') + 1);
        String rest = good.substring(good.indexOf('\n') + 1);
        write(SITE, declaration + "<!DOCTYPE x SYSTEM \"http://localhost:1/x.dtd\">" + rest);
        refused(SITE, 2, "DOCTYPE");
        write(SITE, declaration + "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>"
                + rest.replace("name=\"Cairn\"", "name=\"&e;\""));
        refused(SITE, 2, "DOCTYPE");
        StringBuilder bomb = new StringBuilder("<!DOCTYPE x [<!ENTITY e0 \"boom\">");
        for (int i = 1; i < 60; i++) {
            bomb.append("<!ENTITY e").append(i).append(" \"").append(("&e" + (i - 1) + ";").repeat(10)).append("\">");
        }
        write(SITE, declaration + bomb + "]>" + rest.replace("name=\"Cairn\"", "name=\"&e59;\""));
        refused(SITE, 2, "DOCTYPE");
    }

    @Test
    void hugeFilesAreRefusedUnread() throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(folder.resolve(SITE).toFile(), "rw")) {
            file.setLength(100 << 20);
        }
        Map<String, Long> size = Map.of(SITE, 100L << 20);
        EventFolderException e = assertThrows(EventFolderException.class, () -> EventFolder.open(folder));
        assertTrue(e.what().contains("larger than 64 MB"), e.getMessage());
        assertEquals(size.get(SITE), Files.size(folder.resolve(SITE)));
    }

    @Test
    void endlessElementsAreRefused() throws IOException {
        String good = text(SITE);
        write(SITE, good.replace("</straddle:Site>", "<squares>x</squares>".repeat(1_100_000) + "</straddle:Site>"));
        assertTrue(refused().what().contains("damaged or hostile"));
        write(SITE, good.replace("</straddle:Site>", "<horizon>".repeat(200_000)));
        assertTrue(refused().what().contains("damaged or hostile"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"event.straddle", SITE, "birds.xmi", "plan.xmi", "teams/east.xmi"})
    void emptyBinaryAndTruncatedFilesAreRefused(String name) throws IOException {
        String good = text(name);
        write(name, "");
        assertEquals(name, refused().file());
        write(name, good.substring(0, good.length() / 2));
        assertEquals(name, refused().file());
        byte[] noise = new byte[10_000];
        new Random(1).nextBytes(noise);
        Files.write(folder.resolve(name), noise);
        assertEquals(name, refused().file());
        Files.write(folder.resolve(name), good.replace("=\"", "=\"é").getBytes(StandardCharsets.UTF_16));
        assertEquals(name, refused().file());
    }

    @Test
    void foldersInPlaceOfFilesAreRefused() throws IOException {
        Files.delete(folder.resolve(SITE));
        Files.createDirectory(folder.resolve(SITE));
        refused(SITE, 0, "not a plain file");
    }

    @Test
    void notAnEventFolder() throws IOException {
        EventFolderException e = assertThrows(EventFolderException.class, () -> EventFolder.open(temp));
        assertTrue(e.what().contains("not an event"), e.getMessage());
        assertThrows(EventFolderException.class, () -> EventFolder.open(temp.resolve("nowhere")));
        assertThrows(EventFolderException.class, () -> EventFolder.openReadOnly(temp));
        assertEquals(1, Files.list(temp).count(), "nothing was made");
    }

    @Test
    void objectsOfAWrongKindAreRefused() throws IOException {
        write("event.straddle", text("event.straddle").replaceFirst("<sites(\\s+href=\"sites/cairn)", "<kits$1"));
        refused();
    }
}
