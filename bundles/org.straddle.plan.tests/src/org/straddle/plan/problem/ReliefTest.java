package org.straddle.plan.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

/** Two hours at a site at most; an hour elsewhere begins the count anew. */
class ReliefTest {

    private static final int HOUR = 3600;
    private static final Relief TWO_HOURS = new Relief(2 * HOUR, HOUR);

    private static PlanProblem problem(Commitment... told) {
        return new PlanProblem(List.of(List.of(0), List.of(1)), Wants.ofOneGroup(1, 1), List.of(1),
                List.of(new PlanDay(0, 0, 12 * HOUR, 0, 0, 12 * HOUR)), List.of(), List.of(),
                new RoadTable(2, (a, b) -> 60, (a, b) -> 60), new StationTimes(0, 0, 0), 0, BannedTimes.NONE,
                new Commitments(List.of(told))).with(TWO_HOURS);
    }

    private static Stay stay(int site, double from, double until) {
        return new Stay(0, site, (int) (from * HOUR), (int) (until * HOUR), List.of(), Optional.empty());
    }

    private static boolean keeps(PlanProblem problem, Stay... stays) {
        return new Route(0, List.of(stays)).keepsRelief(problem);
    }

    @Test
    void leavingForAWhileIsNoRelief() {
        PlanProblem problem = problem();
        assertTrue(keeps(problem, stay(0, 1, 3)));
        assertFalse(keeps(problem, stay(0, 1, 3.1)));
        assertFalse(keeps(problem, stay(0, 1, 2), stay(0, 2.5, 3.5)), "half an hour away");
        assertTrue(keeps(problem, stay(0, 1, 3), stay(0, 4, 6)), "an hour away");
        assertTrue(keeps(problem, stay(0, 1, 3), stay(1, 3.1, 3.2), stay(0, 3.3, 5)), "elsewhere");
        assertTrue(keeps(problem.with(Relief.NOT_NEEDED), stay(0, 1, 9)));
    }

    @Test
    void aFixedStayIsAsLongAsItIs() {
        FixedStay fixed = new FixedStay(0, 0, 3 * HOUR, 9 * HOUR, List.of());
        assertEquals(2, Sitting.of(problem(), 0, List.of(stay(0, 1, 3), Stay.of(fixed, List.of()), stay(0, 9, 10))).size());
        assertTrue(keeps(problem(), stay(0, 1, 3), Stay.of(fixed, List.of()), stay(0, 9, 10)));
    }

    /** Others rely on it: it may stay as long, but not longer. */
    @Test
    void whatWasToldMayTakeAsLong() {
        PlanProblem problem = problem(told(0, 1), told(0, 2.5), told(0, 4), told(0, 8));
        assertTrue(keeps(problem, stay(0, 1, 4.1)));
        assertFalse(keeps(problem, stay(0, 0.9, 4)));
        assertFalse(keeps(problem, stay(0, 1, 8.1)), "a gap of more than an hour was told");
        assertFalse(keeps(problem, stay(1, 1, 4)), "of another site");
    }

    private static Commitment told(int site, double from) {
        int start = (int) (from * HOUR);
        return new Commitment(0, new Chance(site, 0, start, (int) (start + HOUR * (from == 1 || from == 2.5 ? 1 : 0.1)),
                Service.of(0.5)), 1);
    }

    @Test
    void aLimitIsAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> new Relief(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Relief(1, -1));
    }
}
