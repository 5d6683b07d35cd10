package org.straddle.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Recomputes by plain arithmetic, written down by hand, what the guide page "How a plan is valued" works out. */
class HandExampleTest {

    private static final double CLOSE = 1e-9;

    /**
     * Who needs one square or the other: 1 − 0.1 · 0.5 = 95 %. Callers: 0.3 · (60 · 0.95 · 1 + 40 · 0.95 · 0.5) =
     * 17.1 + 5.7 = 22.8. Minutes, averaged over callers: (17.1 · 8 + 5.7 · 4) / 22.8 = 7. Contacts: 1.2 · 7 = 8.4.
     * Served: 8.4 / 22.8 = 0.368421. Chance: 0.95 · 0.9 · 1 = 0.855.
     */
    @Test
    void theTurnOnTheLine() {
        TurnChance line = Example.line();
        assertEquals(22.8, line.callers(), CLOSE);
        assertEquals(7, line.minutes(), CLOSE);
        assertEquals(8.4, line.contacts(), CLOSE);
        assertEquals(7.0 / 12, line.quality(), CLOSE);
        assertEquals(0.855, line.chance(), CLOSE);
        assertEquals(0.855 * 0.3 * 1 * 8.4 / 22.8, line.groups().get(0).probability(), CLOSE);
        assertEquals(0.0945, line.groups().get(0).probability(), CLOSE);
        assertEquals(0.04725, line.groups().get(1).probability(), CLOSE);
    }

    /**
     * Callers: 0.3 · 40 · 0.9 = 10.8. Contacts: 0.7 · 6 = 4.2, served 0.388889. Chance: 0.6 · 0.9 · 0.6 = 0.324.
     * Probability: 0.324 · 0.3 · 0.388889 = 0.0378.
     */
    @Test
    void theTurnInside() {
        TurnChance inside = Example.inside();
        assertEquals(10.8, inside.callers(), CLOSE);
        assertEquals(4.2, inside.contacts(), CLOSE);
        assertEquals(0, inside.groups().get(0).probability(), CLOSE);
        assertEquals(0.0378, inside.groups().get(1).probability(), CLOSE);
    }

    /**
     * Needed: 54 and 36 of the one square, 30 and 20 of the other. Served with the one: 54 · 0.0945 = 5.103 and
     * 36 · (1 − 0.95275 · 0.9622) = 36 · 0.08326395 = 2.9975022; with the other 30 · 0.0945 = 2.835 and
     * 20 · 0.04725 = 0.945.
     */
    @Test
    void bothTogether() {
        TurnChance line = Example.line();
        TurnChance inside = Example.inside();
        PlanWorth plan = Example.plan(line, inside);
        assertEquals(140, plan.wanted(), CLOSE);
        assertEquals(5.103 + 2.9975022, plan.served(Example.NEAR), CLOSE);
        assertEquals(2.835 + 0.945, plan.served(Example.FAR), CLOSE);
        assertEquals(11.8805022, plan.served(), CLOSE);
        assertEquals(90 - 8.1005022, plan.owed(Example.NEAR), CLOSE);
        assertEquals(List.of(2, 1), List.of(plan.turns(Example.NEAR), plan.turns(Example.FAR)));
        assertEquals(5.103 + 2.835, plan.byGroup().get(0).served(), CLOSE);
        assertEquals(56, plan.byGroup().get(1).wanted(), CLOSE);
    }

    /** Without the turn inside the plan lacks 36 · 0.95275 · 0.0378 = 1.2965022: less than the 1.3608 it brings alone. */
    @Test
    void whatOneTurnBrings() {
        TurnChance line = Example.line();
        TurnChance inside = Example.inside();
        assertEquals(1.3608, inside.alone(Example.GROUPS), CLOSE);
        assertEquals(1.2965022, Example.plan(line, inside).gain(inside), CLOSE);
        assertEquals(1.2965022, Example.plan(line).more(inside), CLOSE);
        assertEquals(Example.plan(line, inside).served(), Example.plan(line, inside).gain(List.of(line, inside)), CLOSE);
    }

    /** Somebody nearly certain to call is never served more surely than the policy says. */
    @Test
    void noTurnServesMoreSurelyThanThePolicySays() {
        WorthFigures all = new WorthFigures(100, 1, 1000, 1000, 1000, new QualityRamp(0.3, 20), 1, java.time.Duration.ofDays(30),
                1, 1, 1, 1, 1, 1, 1, 0.95, 0.5);
        TurnChance turn = TurnChance.of(List.of(Example.NEAR), Example.GROUPS,
                List.of(new GroupMinutes(10, 1, 10), new GroupMinutes(10, 1, 10)), 10, 1000, 1, 1, 1, all);
        assertEquals(0.95, turn.groups().get(0).probability(), CLOSE);
    }
}
