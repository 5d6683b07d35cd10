package org.straddle.exchange.elements;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.ReadException;
import org.straddle.model.Fresh;
import org.straddle.outlook.EarthSearch;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

class OrientationFileTest {

    private static final String SET = Published.L1_00005 + "\n" + Published.L2_00005 + "\n";

    @TempDir
    Path temp;
    private EventFolder folder;

    @BeforeEach
    void openEvent() throws IOException {
        folder = EventFolder.create(temp.resolve("event"), Fresh.event("Midsummer"));
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(temp.resolve(name), text);
    }

    private static SkyFiles read(Path... files) throws ReadException {
        return SkyFiles.read(List.of(files), null);
    }

    private List<String> kept() throws IOException {
        if (!Files.isDirectory(folder.path().resolve("elements"))) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.path().resolve("elements"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void contentDecidesAndTheCopyIsUntouchedUnderAPublishedName() throws IOException {
        List<String> texts = List.of(InventedOrientation.finals(), InventedOrientation.c04(), InventedOrientation.newerC04());
        List<String> names = List.of("finals2000a-a.txt", "eopc04-b.txt", "eopc04-c.txt");
        for (int i = 0; i < texts.size(); i++) {
            SkyFiles files = read(file((char) ('a' + i) + ".txt", texts.get(i)));
            assertEquals(List.of(), files.elements());
            String done = files.orientation().get(0).keepIn(folder);
            assertTrue(done.contains("2031-06-01 to 2031-07-10") && done.contains("elements/" + names.get(i)), done);
            assertArrayEquals(texts.get(i).getBytes(StandardCharsets.UTF_8),
                    Files.readAllBytes(folder.path().resolve("elements").resolve(names.get(i))));
            Files.delete(folder.path().resolve("elements").resolve(names.get(i)));
        }
    }

    @Test
    void passesRestOnItAndANewerOneReplacesIt() throws IOException {
        assertFalse(EarthSearch.in(folder.elements()).orientation().isLoaded());
        read(file("finals2000A.daily", InventedOrientation.finals())).orientation().get(0).keepIn(folder);
        assertTrue(EarthSearch.in(folder.elements()).orientation().isLoaded());
        String newer = InventedOrientation.finals().substring(InventedOrientation.finals().indexOf('\n') + 1);
        read(file("finals2000A.daily", newer)).orientation().get(0).keepIn(folder);
        assertEquals(List.of("finals2000a.daily"), kept());
        assertEquals("2031-06-02T00:00:00Z",
                EarthSearch.in(folder.elements()).orientation().coverage().orElseThrow().start().toString());
    }

    /** At the end of a forecast days stand without values. */
    @Test
    void daysWithoutValuesAreNotCovered() throws IOException {
        String empty = InventedOrientation.finals() + "31 711 63058.00\n31 712 63059.00 \n";
        assertEquals("2031-06-01T00:00:00Z/2031-07-10T00:00:00Z",
                read(file("f", empty)).orientation().get(0).orientation().coverage().orElseThrow().toString());
    }

    @Test
    void eachFileGoesItsWay() throws IOException {
        SkyFiles files = read(file("birds.tle", SET), file("turning", InventedOrientation.c04()));
        assertEquals("birds.tle", files.elements().get(0).name());
        assertEquals("eopc04", files.orientation().get(0).kind());
    }

    @Test
    void oneBadFileStopsAll() throws IOException {
        Path good = file("good", InventedOrientation.finals());
        Path bad = file("bad", InventedOrientation.c04().replace("2031   6  20", "2031   6  2x"));
        ReadException e = assertThrows(ReadException.class, () -> read(good, bad));
        assertEquals("bad", e.file());
        assertTrue(e.what().contains("eopc04") && e.whatToDo().contains("IERS"), e.getMessage());
        assertEquals(List.of(), kept());
    }

    @Test
    void anEventOnlyLookedAtIsNotChanged() throws IOException {
        OrientationFile file = read(file("good", InventedOrientation.finals())).orientation().get(0);
        try (EventFolder looked = EventFolder.openReadOnly(folder.path())) {
            assertThrows(EventFolderException.class, () -> file.keepIn(looked));
        }
        assertEquals(List.of(), kept());
    }

    /** Cut within a row, noise after a good start, a row that is no row: refused as a whole. */
    @ParameterizedTest
    @ValueSource(strings = {"finals", "c04", "newer c04"})
    void damagedAnywhere(String kind) throws IOException {
        String good = switch (kind) {
            case "finals" -> InventedOrientation.finals();
            case "c04" -> InventedOrientation.c04();
            default -> InventedOrientation.newerC04();
        };
        byte[] noise = new byte[1 << 20];
        new Random(1).nextBytes(noise);
        int row = good.lastIndexOf('\n', good.length() - 2) + 1;
        List<String> damaged = Stream.concat(
                IntStream.of(12, 20, 40, 57).mapToObj(length -> good.substring(0, row + length)),
                Stream.of(good + new String(noise, StandardCharsets.ISO_8859_1), good.replace("0.0200000", "0.02x0000"),
                        good + "and so on\n")).toList();
        for (String text : damaged) {
            Path file = temp.resolve("damaged");
            Files.writeString(file, text, StandardCharsets.ISO_8859_1);
            ReadException e = assertThrows(ReadException.class,
                    () -> assertTimeoutPreemptively(Duration.ofSeconds(60), () -> read(file)),
                    () -> text.length() + ": " + text.substring(row, Math.min(text.length(), row + 300)));
            assertEquals(2, e.getMessage().lines().count(), e.getMessage());
        }
        assertEquals(List.of(), kept());
    }

    @Test
    void largerThanAny() throws IOException {
        byte[] huge = new byte[100_000_000];
        java.util.Arrays.fill(huge, (byte) ' ');
        byte[] rows = InventedOrientation.finals().getBytes(StandardCharsets.UTF_8);
        System.arraycopy(rows, 0, huge, 0, rows.length);
        Path file = Files.write(temp.resolve("huge"), huge);
        assertTrue(assertThrows(ReadException.class, () -> read(file)).getMessage().contains("MB"));
        byte[] large = java.util.Arrays.copyOf(huge, 21_000_000);
        Path second = Files.write(temp.resolve("large"), large);
        assertTrue(assertThrows(ReadException.class, () -> read(second)).getMessage().contains("20 MB"));
    }
}
