package org.straddle.plan.problem;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns that a day is expected to work, because a plan said so, and what each is worth beyond its squares. That makes
 * a new plan change no more than it gains by: its objective is worth plus what kept commitments are worth.
 */
public final class Commitments {

    private static final Comparator<Chance> BY_START = Comparator.comparingInt(Chance::start).thenComparingInt(Chance::end)
            .thenComparingInt(Chance::site).thenComparingInt(Chance::bird);

    public static final Commitments NONE = new Commitments(List.of());

    private final List<Commitment> all;
    private final Map<Integer, Map<Chance, Double>> byDay = new HashMap<>();
    private final Map<Integer, List<Chance>> inOrder = new HashMap<>();

    public Commitments(List<Commitment> commitments) {
        all = List.copyOf(commitments);
        commitments.forEach(commitment -> byDay.computeIfAbsent(commitment.day(), day -> new HashMap<>())
                .merge(commitment.chance(), commitment.worth(), Double::sum));
        byDay.forEach((day, chances) -> inOrder.put(day, chances.keySet().stream().sorted(BY_START).toList()));
    }

    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** The chances committed on a day, by start. */
    public List<Chance> of(int day) {
        return inOrder.getOrDefault(day, List.of());
    }

    /** Whether one stop for committed turns, with what a station needs around them, holds this time. */
    boolean tells(int day, int site, int from, int until, StationTimes times, Relief relief) {
        Stay told = null;
        for (Chance turn : of(day)) {
            Stay around = Stay.around(day, List.of(turn), times);
            boolean goesOn = told != null && told.site() == turn.site() && relief.goesOn(told.departure(), around.arrival());
            told = new Stay(day, turn.site(), goesOn ? told.arrival() : around.arrival(), around.departure(), List.of(turn),
                    Optional.empty());
            if (told.site() == site && told.arrival() <= from && until <= told.departure()) {
                return true;
            }
        }
        return false;
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
