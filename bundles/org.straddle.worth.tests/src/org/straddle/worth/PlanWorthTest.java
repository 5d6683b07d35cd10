package org.straddle.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.straddle.grid.Square;
import org.straddle.model.WorkMode;

/** What must hold of any turns: adding one never brings more when there are more others, and order does not count. */
class PlanWorthTest {

    private static final int TRIALS = 2000;
    private static final double CLOSE = 1e-9;

    private static TurnChance any(Random random) {
        TreeSet<Square> squares = new TreeSet<>(switch (random.nextInt(3)) {
            case 0 -> List.of(Example.NEAR);
            case 1 -> List.of(Example.FAR);
            default -> List.of(Example.NEAR, Example.FAR);
        });
        return Example.turn(squares, minutes(random), minutes(random), WorkMode.values()[random.nextInt(3)],
                random.nextDouble(), random.nextBoolean() ? 1 : 0.6);
    }

    private static GroupMinutes minutes(Random random) {
        double share = random.nextInt(4) == 0 ? 0 : random.nextDouble();
        double inReach = share == 0 ? 0 : 1 + 14 * random.nextDouble();
        return new GroupMinutes(share * inReach, share, inReach);
    }

    private static List<TurnChance> some(Random random) {
        List<TurnChance> turns = new ArrayList<>();
        for (int i = random.nextInt(12); i > 0; i--) {
            turns.add(any(random));
        }
        return turns;
    }

    private static PlanWorth plan(List<TurnChance> turns) {
        return Example.plan(turns.toArray(TurnChance[]::new));
    }

    @Test
    void oneMoreTurnBringsLessTheMoreThereAre() {
        Random random = new Random(1);
        for (int trial = 0; trial < TRIALS; trial++) {
            List<TurnChance> few = some(random);
            List<TurnChance> more = new ArrayList<>(few);
            more.addAll(some(random));
            TurnChance turn = any(random);
            double ofFew = plan(few).more(turn);
            double ofMore = plan(more).more(turn);
            assertTrue(ofMore <= ofFew + CLOSE && ofMore >= 0, "trial " + trial + ": " + ofFew + ", " + ofMore);
            List<TurnChance> with = new ArrayList<>(more);
            with.add(turn);
            assertEquals(plan(with).served() - plan(more).served(), ofMore, CLOSE, "trial " + trial);
            assertEquals(ofMore, plan(with).gain(turn), 1e-7, "trial " + trial);
        }
    }

    @Test
    void worthDoesNotDependOnTheOrderAndIsNeverMoreThanWanted() {
        Random random = new Random(2);
        for (int trial = 0; trial < TRIALS; trial++) {
            List<TurnChance> turns = some(random);
            double worth = plan(turns).served();
            Collections.shuffle(turns, random);
            assertEquals(worth, plan(turns).served(), CLOSE);
            assertTrue(worth >= 0 && worth <= plan(turns).wanted() + CLOSE);
            assertEquals(worth, plan(turns).byGroup().stream().mapToDouble(PlanWorth.OfGroup::served).sum(), CLOSE);
        }
    }

    @Test
    void aMinuteCountsByTheHeightOfTheBird() {
        QualityRamp ramp = new QualityRamp(0.3, 20);
        assertEquals(0, ramp.of(5, 5));
        assertEquals(0.3, ramp.of(5 + 1e-12, 5), CLOSE);
        assertEquals(0.65, ramp.of(12.5, 5), CLOSE);
        assertEquals(1, ramp.of(20, 5));
        assertEquals(1, ramp.of(30.1, 30), "a mask above full view leaves only minutes in full");
    }
}
