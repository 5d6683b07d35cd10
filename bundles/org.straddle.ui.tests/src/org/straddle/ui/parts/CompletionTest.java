package org.straddle.ui.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class CompletionTest {

    private static final List<String> ZONES = List.of("America/New_York", "Atlantic/Reykjavik", "Europe/Lisbon", "Europe/Oslo",
            "Europe/York");

    @Test
    void whatBeginsAWordComesFirstAndABlankStandsForAnUnderscore() {
        assertEquals(List.of("Europe/Lisbon"), Completion.matching("lis", ZONES));
        assertEquals(List.of("America/New_York"), Completion.matching("new y", ZONES));
        assertEquals(List.of("Atlantic/Reykjavik", "Europe/Lisbon", "Europe/Oslo"), Completion.matching("", ZONES).stream()
                .filter(zone -> !zone.contains("York")).toList());
        assertEquals(List.of("Europe/Oslo", "Europe/Lisbon"), Completion.matching("o", ZONES).stream()
                .filter(zone -> zone.startsWith("Europe/") && !zone.contains("York")).toList());
        assertEquals(List.of(), Completion.matching("Europe/Oslo", ZONES), "it stands there already");
    }
}
