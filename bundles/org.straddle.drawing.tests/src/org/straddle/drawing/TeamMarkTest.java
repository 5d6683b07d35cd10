package org.straddle.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class TeamMarkTest {

    @Test
    void twentyEightTeamsAreToldApart() {
        Set<String> marks = IntStream.rangeClosed(1, 28).mapToObj(TeamMark::of)
                .map(mark -> mark.pattern() + " " + mark.colour()).collect(Collectors.toSet());
        assertEquals(28, marks.size());
    }

    @Test
    void neighboursDifferInBothPatternAndColour() {
        for (int number = 1; number < 28; number++) {
            assertNotEquals(TeamMark.of(number).pattern(), TeamMark.of(number + 1).pattern());
            assertNotEquals(TeamMark.of(number).colour(), TeamMark.of(number + 1).colour());
        }
    }

    @Test
    void aTeamWithoutANumberHasAMark() {
        assertEquals("0, plain, orange", TeamMark.of(0).words());
        assertEquals(-3, TeamMark.of(-3).number());
    }

    /** M. Okabe and K. Ito, "Color Universal Design" (2008): orange is 230, 159, 0. */
    @Test
    void coloursArePublishedOnes() {
        assertEquals("#%02X%02X%02X".formatted(230, 159, 0), TeamMark.Colour.ORANGE.hex());
        assertEquals("#%02X%02X%02X".formatted(86, 180, 233), TeamMark.Colour.SKY_BLUE.hex());
        assertEquals("#%02X%02X%02X".formatted(0, 158, 115), TeamMark.Colour.BLUISH_GREEN.hex());
        assertEquals("#%02X%02X%02X".formatted(240, 228, 66), TeamMark.Colour.YELLOW.hex());
        assertEquals("#%02X%02X%02X".formatted(0, 114, 178), TeamMark.Colour.BLUE.hex());
        assertEquals("#%02X%02X%02X".formatted(213, 94, 0), TeamMark.Colour.VERMILLION.hex());
        assertEquals("#%02X%02X%02X".formatted(204, 121, 167), TeamMark.Colour.REDDISH_PURPLE.hex());
    }
}
