package org.straddle.ui.horizon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.straddle.sky.Horizon;

/** Drawings as "0:5 [90:12] 180:3": azimuth:elevation, the chosen point in brackets. */
class MaskDrawingTest {

    private static MaskDrawing drawing(String notation) {
        String[] words = notation.split(" ");
        int chosen = -1;
        for (int i = 0; i < words.length; i++) {
            chosen = words[i].startsWith("[") ? i : chosen;
        }
        return MaskDrawing.of(Horizon.parse(notation.replaceAll("[\\[\\]]", "")).points()).choose(chosen);
    }

    private static void is(String expected, MaskDrawing drawing) {
        assertEquals(expected, java.util.stream.IntStream.range(0, drawing.points().size()).mapToObj(
                i -> i == drawing.chosen() ? "[" + drawing.points().get(i) + "]" : drawing.points().get(i).toString())
                .collect(Collectors.joining(" ")));
    }

    @Test
    void addsInOrderAndChooses() {
        is("0:5 [45.3:7.2] 90:12", drawing("0:5 90:12").add(45.26, 7.22));
        is("[0:3] 90:12", drawing("90:12").add(359.98, 3));
        is("0:5 [90:90]", drawing("0:5").add(90, 200));
        MaskDrawing same = drawing("0:5 90:12");
        assertSame(same, same.add(90.01, 3));
    }

    @Test
    void movesButNotPastItsNeighbours() {
        is("0:5 [100:-3] 180:3", drawing("0:5 [90:12] 180:3").move(100, -3));
        is("0:5 [179.9:12] 180:3", drawing("0:5 [90:12] 180:3").move(300, 12));
        is("[0:5] 90:12", drawing("[0:5] 90:12").move(-20, 5));
        is("0:5 [359.9:12]", drawing("0:5 [90:12]").move(380, 12));
        is("0:5 90:12", drawing("0:5 90:12").nudge(1, 1));
        is("0:5 [89:12.1]", drawing("0:5 [90:12]").nudge(-1, 0.1));
    }

    @Test
    void removesAndGoesAround() {
        is("[0:5] 180:3", drawing("0:5 [90:12] 180:3").remove());
        assertEquals(Optional.empty(), drawing("[0:5]").remove().horizon());
        is("[0:5] 90:12 180:3", drawing("0:5 90:12 [180:3]").step(1));
        is("0:5 90:12 [180:3]", drawing("0:5 90:12 180:3").step(-1));
        is("[0:5] 90:12", drawing("0:5 90:12").step(1));
    }

    @Test
    void addsBehindTheChosenOneOnTheLine() {
        is("0:5 [45:8.5] 90:12", drawing("[0:5] 90:12").addAfterChosen());
        is("0:5 90:12 [225:8.5]", drawing("0:5 [90:12]").addAfterChosen());
        is("0:5 [180:5]", drawing("[0:5]").addAfterChosen());
        is("[0:0]", MaskDrawing.of(java.util.List.of()).addAfterChosen());
    }

    @Test
    void findsThePointUnderTheMouseAcrossNorth() {
        MaskDrawing drawing = drawing("0:5 90:12 358:5");
        assertEquals(0, drawing.near(359.8, 5.2, 2, 1));
        assertEquals(2, drawing.near(357, 5, 2, 1));
        assertEquals(-1, drawing.near(90, 14, 2, 1));
    }
}
