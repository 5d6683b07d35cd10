package org.straddle.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowTest {

    /** Minutes of one hour: "10-20" is 10:10 to 10:20. */
    private static Window w(String minutes) {
        String[] m = minutes.split("-");
        return Window.parse("2031-06-21T10:%sZ/2031-06-21T10:%sZ".formatted(m[0] + ":00", m[1] + ":00"));
    }

    private static String minutes(Window w) {
        return w.start().toString().substring(14, 16) + "-" + w.end().toString().substring(14, 16);
    }

    private static List<Window> all(String windows) {
        return windows.isBlank() ? List.of() : Arrays.stream(windows.split(" ")).map(WindowTest::w).toList();
    }

    @ParameterizedTest
    @CsvSource({"10-20, 20-30, false, '', 0", "10-20, 15-30, true, 15-20, 0", "10-40, 20-30, true, 20-30, 0",
        "10-20, 25-30, false, '', 5", "25-30, 10-20, false, '', 5"})
    void twoWindows(String a, String b, boolean overlap, String common, long gapMinutes) {
        assertEquals(overlap, w(a).overlaps(w(b)));
        assertEquals(common, w(a).intersection(w(b)).map(WindowTest::minutes).orElse(""));
        assertEquals(gapMinutes, w(a).gapTo(w(b)).toMinutes());
        assertEquals(overlap, w(b).overlaps(w(a)));
        assertEquals(gapMinutes, w(b).gapTo(w(a)).toMinutes());
    }

    @ParameterizedTest
    @CsvSource({"10-20 30-40, 15-35, 15-20 30-35", "10-20 20-30, 10-30, 10-20 20-30", "10-20, 20-30, ''",
        "10-50, 15-20 25-30 45-55, 15-20 25-30 45-50"})
    void timesInBothLists(String a, String b, String common) {
        assertEquals(common, Windows.common(all(a), all(b)).stream().map(WindowTest::minutes)
                .collect(Collectors.joining(" ")));
        assertEquals(common, Windows.common(all(b), all(a)).stream().map(WindowTest::minutes)
                .collect(Collectors.joining(" ")));
    }

    @Test
    void holdsItsStartAndNotItsEnd() {
        Window w = w("10-20");
        assertTrue(w.contains(w.start()));
        assertFalse(w.contains(w.end()));
        assertTrue(w.contains(w("10-20")));
        assertFalse(w.contains(w("10-21")));
        assertEquals(10, w.duration().toMinutes());
    }

    @Test
    void readsWhatItWrites() {
        Window w = w("10-20");
        assertEquals("2031-06-21T10:10:00Z/2031-06-21T10:20:00Z", w.toString());
        assertEquals(w, Window.parse(w.toString()));
        assertEquals(w, Window.parse("2031-06-21T10:10:00Z/PT10M"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/", "2031-06-21T10:10:00Z", "2031-06-21T10:10:00Z/2031-06-21T10:10:00Z",
        "2031-06-21T10:10:00Z/PT-1M", "2031-06-21T10:10:00/PT1M", "a/b/c"})
    void refuses(String text) {
        assertThrows(IllegalArgumentException.class, () -> Window.parse(text));
    }
}
