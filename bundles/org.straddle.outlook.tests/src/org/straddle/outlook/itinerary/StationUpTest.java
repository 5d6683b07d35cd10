package org.straddle.outlook.itinerary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.straddle.sky.Window;

class StationUpTest {

    private static final Window STOP = minutes(0, 60);

    private final StationUp station = new StationUp(Duration.ofMinutes(15), Duration.ofMinutes(10));

    private static Window minutes(int from, int until) {
        Instant noon = Instant.parse("2031-06-21T12:00:00Z");
        return new Window(noon.plusSeconds(60L * from), noon.plusSeconds(60L * until));
    }

    @Test
    void aTurnMayTakeAllTheTimeBetweenSetUpAndTakeDown() {
        assertEquals(Set.of(), station.broken(STOP, minutes(15, 50)));
        assertEquals(minutes(0, 60), station.around(minutes(15, 50)));
    }

    @Test
    void eachEndIsJudgedByItself() {
        assertEquals(Set.of(PlanRule.TURN_BEFORE_SET_UP), station.broken(STOP, minutes(14, 50)));
        assertEquals(Set.of(PlanRule.TURN_AFTER_TAKE_DOWN), station.broken(STOP, minutes(15, 51)));
        assertEquals(Set.of(PlanRule.TURN_BEFORE_SET_UP, PlanRule.TURN_AFTER_TAKE_DOWN), station.broken(STOP, minutes(0, 60)));
    }

    @Test
    void aTurnThatRunsPastTheStopBreaksNothingElseAtThatEnd() {
        assertEquals(Set.of(PlanRule.TURN_OUTSIDE_STOP), station.broken(STOP, minutes(20, 61)));
        assertEquals(Set.of(PlanRule.TURN_OUTSIDE_STOP), station.broken(STOP, minutes(-1, 40)));
        assertEquals(Set.of(PlanRule.TURN_OUTSIDE_STOP), station.broken(STOP, minutes(70, 80)));
        assertEquals(Set.of(PlanRule.TURN_OUTSIDE_STOP, PlanRule.TURN_BEFORE_SET_UP), station.broken(STOP, minutes(5, 61)));
    }

    @Test
    void theGapCountsFromTheEndOfOneTurnToTheStartOfTheNextWhicheverIsNamedFirst() {
        TurnGap gap = new TurnGap(Duration.ofMinutes(3));
        assertFalse(gap.isBroken(minutes(0, 10), minutes(13, 20)));
        assertFalse(gap.isBroken(minutes(13, 20), minutes(0, 10)));
        assertTrue(gap.isBroken(minutes(0, 10), minutes(12, 20)));
        assertTrue(gap.isBroken(minutes(12, 20), minutes(0, 10)));
        assertTrue(gap.isBroken(minutes(0, 10), minutes(5, 6)));
        assertFalse(new TurnGap(Duration.ZERO).isBroken(minutes(0, 10), minutes(10, 20)));
    }
}
