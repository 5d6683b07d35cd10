package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns that a day is expected to work, because a plan said so, and what each is worth beyond its squares. That makes
 * a new plan change no more than it gains by: its objective is worth plus what kept commitments are worth.
 */
public final class Commitments {

    public static final Commitments NONE = new Commitments(List.of());

    private final List<Commitment> all;
    private final Map<Integer, Map<Chance, Double>> byDay = new HashMap<>();

    public Commitments(List<Commitment> commitments) {
        all = List.copyOf(commitments);
        commitments.forEach(commitment -> byDay.computeIfAbsent(commitment.day(), day -> new HashMap<>())
                .merge(commitment.chance(), commitment.worth(), Double::sum));
    }

    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** The chances committed on a day, by start. */
    public List<Chance> of(int day) {
        List<Chance> chances = new ArrayList<>(byDay.getOrDefault(day, Map.of()).keySet());
        chances.sort(Comparator.comparingInt(Chance::start).thenComparingInt(Chance::end)
                .thenComparingInt(Chance::site).thenComparingInt(Chance::bird));
        return chances;
    }

    public double worth(int day, Chance turn) {
        Map<Chance, Double> ofDay = byDay.get(day);
        return ofDay == null ? 0 : ofDay.getOrDefault(turn, 0.0);
    }

    /** Of all turns of a stay. */
    public double worth(Stay stay) {
        Map<Chance, Double> ofDay = byDay.get(stay.day());
        return ofDay == null ? 0 : stay.turns().stream().mapToDouble(turn -> ofDay.getOrDefault(turn, 0.0)).sum();
    }
}
