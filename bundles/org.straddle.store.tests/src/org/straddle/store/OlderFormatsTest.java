package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.Base;
import org.straddle.model.EnteredDrive;
import org.straddle.model.StraddlePackage;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;

/** The demo event as earlier releases wrote it, in {@code data/format-1} (two acceptances), {@code data/format-2}
 * (one) and {@code data/format-3} (one, and the time of a drive). */
class OlderFormatsTest {

    /** Tests run in the folder of their bundle. */
    private static final Path WRITTEN_THEN = Path.of("../org.straddle.store.tests/data").toAbsolutePath().normalize();

    private static final List<String> REPEATS = List.of("0.4", "0.2", "0.12", "0.08", "0.06", "0.05", "0.05", "0.04");

    @TempDir
    Path folder;

    private void copy(int format) throws IOException {
        Path then = WRITTEN_THEN.resolve("format-" + format);
        try (Stream<Path> files = Files.walk(then)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(then.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }

    @Test
    void theFirstOpensAndSaysWhatCouldNotBeCarriedOver() throws Exception {
        copy(1);
        try (EventFolder opened = EventFolder.open(folder)) {
            assertEquals(List.of(3, 8, 20, 6), sizes(opened));
            assertFalse(opened.event().getPlan().getStops().isEmpty());
            Migration migration = opened.migration().orElseThrow();
            assertEquals(1, migration.from());
            assertEquals(List.of("kit-without-spare", "survey-old"),
                    migration.lost().stream().map(finding -> finding.split(" ")[0]).sorted().toList());
            assertTrue(opened.event().getAcceptances().isEmpty());
            assertTrue(migration.sentence().contains("2 acceptances") && migration.sentence().contains("visit-old"),
                    migration.sentence());
            assertEquals(REPEATS, migration.repeats());
        }
    }

    /** Worths of repeated passes go, with a word; all else stays. */
    @Test
    void theSecondOpensWithoutItsWorthsOfRepeatsAndSaysWhatToAcceptAgain() throws Exception {
        copy(2);
        try (EventFolder opened = EventFolder.open(folder)) {
            assertEquals(List.of(3, 8, 20, 6), sizes(opened));
            assertEquals(70, opened.event().getPolicies().getRoadSpeedKmh());
            assertEquals(480, opened.event().getPolicies().getDrivingLimitMinutes());
            assertEquals(List.of(), opened.event().getAcceptances());
            Migration migration = opened.migration().orElseThrow();
            assertEquals(2, migration.from());
            assertEquals(1, migration.lost().size());
            assertEquals(REPEATS, migration.repeats());
            assertTrue(migration.sentence().contains("0.12") && migration.sentence().contains("format 2"),
                    migration.sentence());
        }
    }

    /** What was called otherwise is carried over under its name of today. */
    @Test
    void theThirdOpensWithItsVisitsAndTimesOfDrives() throws Exception {
        copy(3);
        try (EventFolder opened = EventFolder.open(folder)) {
            assertEquals(List.of(3, 8, 20, 6), sizes(opened));
            EnteredDrive drive = opened.event().getEnteredDrives().get(0);
            assertEquals(74, drive.getMinutes());
            assertEquals("Borgarnes", ((Base) drive.getTo()).getName());
            List<Visit> visits = opened.event().getSites().stream().flatMap(site -> site.getVisits().stream()).toList();
            assertEquals(20, visits.size());
            assertTrue(visits.stream().allMatch(visit -> "Q3DUN".equals(visit.getVisitor())));
            assertTrue(opened.event().getSites().stream().flatMap(site -> site.getReviews().stream())
                    .anyMatch(review -> visits.contains(review.getVisit())));
            Migration migration = opened.migration().orElseThrow();
            assertEquals(3, migration.from());
            assertEquals(1, migration.lost().size());
            assertTrue(migration.sentence().contains("drive-too-long"), migration.sentence());
            assertEquals(List.of(), opened.event().getAcceptances());
            assertEquals(List.of(), migration.repeats());
            opened.save();
        }
        try (EventFolder opened = EventFolder.openReadOnly(folder)) {
            assertEquals(74, opened.event().getEnteredDrives().get(0).getMinutes());
        }
        assertFalse(String.join("", content().values()).matches("(?s).*(legTimes|<surveys|surveyor=).*"));
    }

    /** A file of today that holds a name of then is refused. */
    @Test
    void todaysFilesMayNotHoldANameOfThen() throws Exception {
        copy(3);
        Path file = folder.resolve("event.straddle");
        Files.writeString(file, Files.readString(file).replace("urn:straddle:model:3", StraddlePackage.eNS_URI));
        EventFolderException refused = assertThrows(EventFolderException.class, () -> EventFolder.openReadOnly(folder));
        assertTrue(refused.getMessage().contains("legTimes"), refused.getMessage());
    }

    /** What a crash of an older Straddle left is carried over like what was saved. */
    @Test
    void whatACrashLeftIsCarriedOverToo() throws Exception {
        copy(2);
        UnsavedEdits.Found left = new UnsavedEdits.Found(Instant.EPOCH, false, folder, bytes(), Map.of(), List.of());
        try (EventFolder opened = EventFolder.openUnsaved(folder, left)) {
            assertEquals(2, opened.migration().orElseThrow().from());
            assertEquals(List.of(), opened.event().getAcceptances());
            opened.save();
        }
        content().forEach((name, text) -> assertFalse(text.contains("urn:straddle:model:2"), name));
    }

    private Map<String, byte[]> bytes() throws IOException {
        Map<String, byte[]> bytes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                bytes.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return bytes;
    }

    /** Forms took a 0 where it makes no sense, and the usual figure was used; today's range begins above it. */
    @Test
    void aFigureThatMadeNoSenseIsWhatItStoodFor() throws Exception {
        copy(2);
        Path file = folder.resolve("event.straddle");
        Files.writeString(file, Files.readString(file).replaceFirst("drivingLimitMinutes=\"[^\"]*\"", "drivingLimitMinutes=\"0\""));
        try (EventFolder opened = EventFolder.open(folder)) {
            assertEquals(300, opened.event().getPolicies().getDrivingLimitMinutes());
            Migration migration = opened.migration().orElseThrow();
            assertEquals(List.of(Literals.POLICIES__DRIVING_LIMIT_MINUTES), migration.figures());
            assertTrue(migration.sentence().contains("driving limit"), migration.sentence());
            opened.save();
        }
        try (EventFolder opened = EventFolder.openReadOnly(folder)) {
            assertEquals(300, opened.event().getPolicies().getDrivingLimitMinutes());
        }
    }

    /** What a form does not take is refused in a file of today, with its range. */
    @Test
    void todaysFiguresLieInTheirRange() throws Exception {
        copy(2);
        try (EventFolder opened = EventFolder.open(folder)) {
            opened.event().getPolicies().setDrivingLimitMinutes(0);
            EventFolderException refused = assertThrows(EventFolderException.class, opened::save);
            assertTrue(refused.getMessage().contains("drivingLimitMinutes") && refused.getMessage().contains("1 to 1440"),
                    refused.getMessage());
        }
    }

    /** Only files of an older format may hold what is retired. */
    @Test
    void todaysFilesMayNotHoldWorthsOfRepeats() throws Exception {
        copy(2);
        Path file = folder.resolve("event.straddle");
        Files.writeString(file, Files.readString(file).replace("urn:straddle:model:2", "urn:straddle:model:3"));
        assertThrows(EventFolderException.class, () -> EventFolder.openReadOnly(folder), "nor those of format 3");
        Files.writeString(file, Files.readString(file).replace("urn:straddle:model:3", StraddlePackage.eNS_URI));
        EventFolderException refused = assertThrows(EventFolderException.class, () -> EventFolder.openReadOnly(folder));
        assertTrue(refused.getMessage().contains("repeatWorths"), refused.getMessage());
        assertTrue(refused.line() > 0, refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void toLookAtItChangesNothingOnTheDisk(int format) throws Exception {
        copy(format);
        Map<String, String> before = content();
        try (EventFolder opened = EventFolder.openReadOnly(folder)) {
            assertTrue(opened.migration().isPresent());
        }
        assertEquals(before, content());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void isOfTheFormatOfTodayAfterASave(int format) throws Exception {
        copy(format);
        try (EventFolder opened = EventFolder.open(folder)) {
            opened.save();
        }
        content().forEach((name, text) -> assertFalse(text.contains("urn:straddle:model:" + format)
                || text.contains("repeatWorths"), name));
        try (EventFolder opened = EventFolder.openReadOnly(folder)) {
            assertTrue(opened.migration().isEmpty());
            assertEquals(20, opened.event().getSites().size());
        }
    }

    private static List<Integer> sizes(EventFolder opened) {
        return List.of(opened.event().getTeams().size(), opened.event().getOperators().size(),
                opened.event().getSites().size(), opened.event().getBirds().size());
    }

    private Map<String, String> content() throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).filter(path -> !path.endsWith(".straddle-lock")).toList()) {
                content.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return content;
    }
}
