package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo event with two acceptances as the release before wrote it, in {@code data/format-1}. */
class FormatOneTest {

    /** Tests run in the folder of their bundle. */
    private static final Path WRITTEN_THEN = Path.of("data", "format-1").toAbsolutePath();

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.walk(WRITTEN_THEN)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(WRITTEN_THEN.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }

    @Test
    void opensAndSaysWhatCouldNotBeCarriedOver() throws Exception {
        try (EventFolder opened = EventFolder.open(folder)) {
            assertEquals(List.of(3, 8, 20, 6), List.of(opened.event().getTeams().size(), opened.event().getOperators().size(),
                    opened.event().getSites().size(), opened.event().getBirds().size()));
            assertFalse(opened.event().getPlan().getStops().isEmpty());
            Migration migration = opened.migration().orElseThrow();
            assertEquals(1, migration.from());
            assertEquals(List.of("kit-without-spare", "survey-old"),
                    migration.lost().stream().map(finding -> finding.split(" ")[0]).sorted().toList());
            assertTrue(opened.event().getAcceptances().isEmpty());
            assertTrue(migration.sentence().contains("2 acceptances") && migration.sentence().contains("survey-old"),
                    migration.sentence());
        }
    }

    @Test
    void toLookAtItChangesNothingOnTheDisk() throws Exception {
        Map<String, String> before = content();
        try (EventFolder opened = EventFolder.openReadOnly(folder)) {
            assertTrue(opened.migration().isPresent());
        }
        assertEquals(before, content());
    }

    @Test
    void isOfTheFormatOfTodayAfterASave() throws Exception {
        try (EventFolder opened = EventFolder.open(folder)) {
            opened.save();
        }
        content().forEach((name, text) -> assertFalse(text.contains("urn:straddle:model:1"), name));
        try (EventFolder opened = EventFolder.openReadOnly(folder)) {
            assertTrue(opened.migration().isEmpty());
            assertEquals(20, opened.event().getSites().size());
        }
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
