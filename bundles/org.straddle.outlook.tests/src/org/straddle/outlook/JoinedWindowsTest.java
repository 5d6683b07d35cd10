package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.sky.Window;

class JoinedWindowsTest {

    /** Windows as pairs of seconds. */
    @ParameterizedTest
    @CsvSource({"'', ''", "1-2, 1-2", "1-2 3-4, 1-2 3-4", "3-4 1-2, 1-2 3-4", "1-2 2-3, 1-3", "1-5 2-3, 1-5",
        "1-4 2-6 8-9, 1-6 8-9", "1-5 2-3 4-7, 1-7"})
    void joinsWhatTouchesOrOverlaps(String windows, String expected) {
        assertEquals(expected, written(JoinedWindows.of(read(windows))));
    }

    private static List<Window> read(String text) {
        return text.isEmpty() ? List.of() : Stream.of(text.split(" ")).map(pair -> new Window(
                Instant.ofEpochSecond(Long.parseLong(pair.split("-")[0])),
                Instant.ofEpochSecond(Long.parseLong(pair.split("-")[1])))).toList();
    }

    private static String written(List<Window> windows) {
        return windows.stream().map(w -> w.start().getEpochSecond() + "-" + w.end().getEpochSecond())
                .collect(Collectors.joining(" "));
    }
}
