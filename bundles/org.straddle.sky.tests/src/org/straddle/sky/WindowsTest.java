package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowsTest {

    /** Windows as pairs of seconds. */
    @ParameterizedTest
    @CsvSource({"'', ''", "1-2, 1-2", "1-2 3-4, 1-2 3-4", "3-4 1-2, 1-2 3-4", "1-2 2-3, 1-3", "1-5 2-3, 1-5",
        "1-4 2-6 8-9, 1-6 8-9", "1-5 2-3 4-7, 1-7"})
    void joinsWhatTouchesOrOverlaps(String windows, String expected) {
        assertEquals(expected, written(Windows.joined(read(windows))));
    }

    @ParameterizedTest
    @CsvSource({"'', 2-3, ''", "1-2, 2-3, 1-2", "1-4, 2-3, 1-2 3-4", "1-4, 1-3, 3-4", "1-4, 2-9, 1-2", "2-3, 1-9, ''",
        "1-3 5-8, 2-6, 1-2 6-8",
        "1-9, 6-7 2-3, 1-2 3-6 7-9", "1-9, '', 1-9"})
    void leavesWhatIsNotTaken(String windows, String taken, String expected) {
        assertEquals(expected, written(Windows.without(read(windows), read(taken))));
    }

    @ParameterizedTest
    @CsvSource({"'', 2-3, ''", "1-2, 2-3, ''", "3-4, 2-3, ''", "1-4, 2-3, 2-3", "1-3 5-8, 2-6, 2-3 5-6", "1-2 3-4 5-6 7-8, 3-8, 3-4 5-6 7-8",
        "1-2 3-4 5-6 7-8, 4-5, ''", "1-2 3-4 5-6 7-8, 0-9, 1-2 3-4 5-6 7-8"})
    void clipsToOneWindow(String windows, String to, String expected) {
        assertEquals(expected, written(Windows.clipped(read(windows), read(to).get(0))));
        assertEquals(expected, written(Windows.common(read(windows), read(to))));
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
