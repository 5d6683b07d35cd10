package org.straddle.daysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.drawing.Face;

class LabelTest {

    private static Optional<String> clipped(String text, int letters) {
        return Label.clipped(text, new Box(0, 0, 7 * letters, 15), Face.PLAIN, DaySheetLayoutTest.SEVEN_BY_FIFTEEN)
                .map(Label::text);
    }

    @Test
    void textIsCutWithAnEllipsis() {
        assertEquals(Optional.of("Heath"), clipped("Heath", 5));
        assertEquals(Optional.of("Heat…"), clipped("Heath Cairn", 5));
        assertEquals(Optional.of("Heath…"), clipped("Heath Cairn", 7), "no space before the ellipsis");
        assertEquals(Optional.empty(), clipped("Heath Cairn", 3));
        assertEquals(Optional.empty(), clipped("", 10));
    }

    @Test
    void theLongestWordingThatFitsIsTaken() {
        List<String> wordings = List.of("T1 · Tern-1 (demo) · 11:48Z", "T1 11:48Z", "T1");
        assertEquals(Optional.of("T1 11:48Z"), Label.longest(wordings, new Box(0, 0, 7 * 12, 15), Face.SMALL,
                DaySheetLayoutTest.SEVEN_BY_FIFTEEN).map(Label::text));
    }
}
