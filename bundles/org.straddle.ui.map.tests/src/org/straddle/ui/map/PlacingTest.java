package org.straddle.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.atlas.mark.Nudge;
import org.straddle.atlas.mark.Snap;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;

class PlacingTest {

    private static final GeoPosition FROM = new GeoPosition(63.61, -20.0004);

    @Test
    void aTenthOfAMetreIsKept() {
        Placing moved = Placing.begin(Optional.of("site"), FROM).to(Nudge.of(FROM, 0.1, 0));
        assertTrue(moved.isMoved());
        assertEquals(0.1, Geodesic.distanceM(FROM, moved.at()), 0.0002);
        assertEquals(FROM, moved.from());
    }

    @Test
    void aSnapIsExactUntilTheNextStep() {
        Placing placing = Placing.begin(Optional.empty(), FROM);
        assertFalse(placing.isMoved());
        Placing snapped = placing.snapped(Snap.toLine(FROM, 100).orElseThrow());
        assertEquals(-20, snapped.at().longitudeDeg());
        assertEquals("20°W", snapped.on().orElseThrow().toString());
        assertEquals(Optional.empty(), snapped.to(Nudge.of(snapped.at(), 1, 0)).on());
    }
}
