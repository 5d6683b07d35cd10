package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.store.KeptFolder;

class EarthSearchTest {

    /** Forty days of invented values in the columns of the IERS finals2000A file. */
    private static String finals() {
        StringBuilder rows = new StringBuilder();
        for (int day = 0; day < 40; day++) {
            LocalDate date = LocalDate.of(2027, 6, 1).plusDays(day);
            // Modified Julian day 40587 is 1970-01-01.
            rows.append(String.format(Locale.ROOT, "%2d%2d%2d %8.2f I %9.6f 0.000031 %9.6f 0.000025  I%10.7f 0.0000042"
                    + "  1.3154 0.0035  I    -0.094    0.119    -0.077    0.029%n", date.getYear() % 100,
                    date.getMonthValue(), date.getDayOfMonth(), 40587.0 + date.toEpochDay(), 0.1, 0.3, 0.02));
        }
        return rows.toString();
    }

    @TempDir
    Path elements;

    @Test
    void withoutAFileThereIsNoOrientation() throws IOException {
        assertFalse(EarthSearch.in(KeptFolder.of(elements)).orientation().isLoaded());
        assertFalse(EarthSearch.in(KeptFolder.of(elements.resolve("missing"))).orientation().isLoaded());
        assertSame(EarthSearch.in(KeptFolder.of(elements)), EarthSearch.in(KeptFolder.of(elements)));
    }

    @Test
    void aFileUnderItsPublishedNameIsTakenAndKeptUntilItChanges() throws IOException {
        Path file = elements.resolve("finals2000A.daily");
        Files.writeString(file, finals());
        PassSearch first = EarthSearch.in(KeptFolder.of(elements));
        assertTrue(first.orientation().isLoaded());
        assertSame(first, EarthSearch.in(KeptFolder.of(elements)));
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2016-05-01T00:00:00Z")));
        assertNotSame(first, EarthSearch.in(KeptFolder.of(elements)));
        Files.delete(file);
        assertFalse(EarthSearch.in(KeptFolder.of(elements)).orientation().isLoaded());
    }

    @Test
    void otherFilesAreNotTouched() throws IOException {
        Files.writeString(elements.resolve("demo.tle"), "finals2000A");
        assertFalse(EarthSearch.in(KeptFolder.of(elements)).orientation().isLoaded());
    }

    @Test
    void aBrokenFileIsNamedWithWhatToDo() throws IOException {
        Files.writeString(elements.resolve("eopc04.broken"), "nothing of the kind");
        IOException failure = assertThrows(IOException.class, () -> EarthSearch.in(KeptFolder.of(elements)));
        assertTrue(failure.getMessage().contains("eopc04.broken"), failure.getMessage());
        assertEquals(2, failure.getMessage().lines().count(), failure.getMessage());
    }
}
