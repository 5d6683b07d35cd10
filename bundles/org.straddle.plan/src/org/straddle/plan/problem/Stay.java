package org.straddle.plan.problem;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A stop of a plan in the terms of the problem.
 *
 * @param day   index of the team day, or {@link FixedStay#NO_DAY}
 * @param turns passes to work, in order, without those of a fixed stay
 * @param fixed the fixed stay that this one is
 */
public record Stay(int day, int site, int arrival, int departure, List<Chance> turns, Optional<FixedStay> fixed) {

    public Stay {
        turns = List.copyOf(turns);
    }

    /** The shortest stay for these turns. */
    public static Stay around(int day, List<Chance> turns, StationTimes times) {
        return new Stay(day, turns.get(0).site(), times.arrivalFor(turns.get(0).start()),
                times.departureAfter(turns.get(turns.size() - 1).end()), turns, Optional.empty());
    }

    public static Stay of(FixedStay fixed, List<Chance> more) {
        return new Stay(fixed.day(), fixed.site(), fixed.arrival(), fixed.departure(), more, Optional.of(fixed));
    }

    public List<Chance> fixedTurns() {
        return fixed.map(FixedStay::turns).orElse(List.of());
    }

    /** By group: the part of those who need a square here that its turns do not serve, fixed ones included. */
    public double[] unserved(int groups) {
        double[] left = unserved(turns, groups);
        if (fixed.isPresent()) {
            serve(left, fixed.get().turns());
        }
        return left;
    }

    /** The same for turns by themselves. */
    public static double[] unserved(List<Chance> turns, int groups) {
        double[] left = new double[groups];
        Arrays.fill(left, 1);
        serve(left, turns);
        return left;
    }

    private static void serve(double[] left, List<Chance> turns) {
        for (Chance turn : turns) {
            for (int g = 0; g < left.length; g++) {
                left[g] *= 1 - turn.service().probability(g);
            }
        }
    }

    public int turnCount() {
        return turns.size() + fixedTurns().size();
    }

    public boolean overlaps(int from, int until) {
        return arrival < until && from < departure;
    }
}
