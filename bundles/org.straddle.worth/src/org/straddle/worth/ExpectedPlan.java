package org.straddle.worth;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Turn;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.keeping.PlanKeeping;

/**
 * What the plan of an event is expected to bring: each turn happens with its own chance of being kept. A search counts every
 * turn with one usual chance instead, so that what turns bring adds up; that sum stands beside it. A turn on no day of its
 * team has no chance of its own and happens with the usual one.
 *
 * @param turns    those that can be used, each with its own chance
 * @param served   what they are worth together
 * @param bySearch what they are worth as a search counts
 */
public record ExpectedPlan(EventWorth worth, Map<Turn, TurnChance> turns, PlanWorth served, PlanWorth bySearch) {

    /** What people would call the same: half a contact. */
    private static final double SAME = 0.5;

    public ExpectedPlan {
        turns = Map.copyOf(turns);
    }

    public static ExpectedPlan of(EventWorth worth) {
        Itinerary plan = Itinerary.of(worth.outlook().event());
        Map<Turn, TurnChance> usual = worth.turns();
        Map<Turn, Double> kept = PlanKeeping.chances(worth.outlook(), plan);
        Map<Turn, TurnChance> turns = new HashMap<>();
        usual.forEach((turn, chance) -> turns.put(turn,
                kept.containsKey(turn) ? chance.happening(kept.get(turn), worth.figures()) : chance));
        return new ExpectedPlan(worth, turns, worth.of(turns.values()), worth.of(usual.values()));
    }

    /** Whether it matters that turns have chances of their own. */
    public boolean differs() {
        return Math.abs(served.served() - bySearch.served()) >= SAME;
    }

    public Optional<TurnChance> of(Turn turn) {
        return Optional.ofNullable(turns.get(turn));
    }

    /** What the plan would lose without a turn; 0 for one that cannot be used. */
    public double gain(Turn turn) {
        return of(turn).map(served::gain).orElse(0.0);
    }

    /** The chasers, in the order of all values by group. */
    public List<ChaserGroup> groups() {
        return worth.groups();
    }
}
