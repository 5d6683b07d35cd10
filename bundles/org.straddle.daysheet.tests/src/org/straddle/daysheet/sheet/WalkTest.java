package org.straddle.daysheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.daysheet.Rove;
import org.straddle.model.Stop;
import org.straddle.model.Turn;

class WalkTest {

    private final Rove rove = new Rove("UTC").team(1, "08-20").team(2, "08-20");
    private final Stop early = rove.stop(1, "A", 64, -21, "09-10");
    private final Turn turn = rove.turn(early, "Tern-1 (demo)", "09:10-09:20");
    private final Stop late = rove.stop(1, "B", 64, -21, "15-16");
    private final Stop other = rove.stop(2, "C", 64, -21, "14-15");
    private final Walk walk = new Walk(rove.sheet());

    private SheetItem item(String id) {
        return walk.sheet().item(id).orElseThrow();
    }

    @Test
    void tabReadsLaneByLane() {
        List<String> ids = new ArrayList<>();
        for (Optional<SheetItem> at = walk.next(Optional.empty()); at.isPresent(); at = walk.next(at)) {
            ids.add(at.get().id());
        }
        assertEquals(List.of(early.getId(), turn.getId(), late.getId(), other.getId()), ids);
        assertEquals(other.getId(), walk.previous(Optional.empty()).orElseThrow().id());
    }

    @Test
    void arrowsStayInTheLaneOrGoToTheNearestInTheNext() {
        assertEquals(late.getId(), walk.later(item(turn.getId())).orElseThrow().id());
        assertEquals(Optional.empty(), walk.later(item(late.getId())));
        assertEquals(late.getId(), walk.above(item(other.getId())).orElseThrow().id());
        assertEquals(other.getId(), walk.below(item(early.getId())).orElseThrow().id());
        assertEquals(Optional.empty(), walk.below(item(turn.getId())), "team 2 has no turns");
    }
}
