package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Worth of the first, second, … pass worked from a square, as shares of its demand. Passes beyond the list
 * are worth nothing. A share above the one before it counts as that one: with falling shares the worth of a
 * pass never depends on the order in which passes are added.
 */
public final class Tiers {

    private final double[] share;
    private final double[] sum;

    /** @throws IllegalArgumentException when a share is negative or not a number */
    public Tiers(List<Double> shares) {
        share = new double[shares.size()];
        sum = new double[shares.size() + 1];
        for (int i = 0; i < share.length; i++) {
            double given = shares.get(i);
            if (!(given >= 0)) {
                throw new IllegalArgumentException("A repeat worth cannot be " + given);
            }
            share[i] = i == 0 ? given : Math.min(given, share[i - 1]);
            sum[i + 1] = sum[i] + share[i];
        }
    }

    /** The same with so many passes more that are worth nothing but may be worked for another reason. */
    public Tiers withMore(int passes) {
        List<Double> shares = new ArrayList<>();
        Arrays.stream(share).forEach(shares::add);
        shares.addAll(Collections.nCopies(passes, 0.0));
        return passes == 0 ? this : new Tiers(shares);
    }

    /** How many passes from one square are worth anything, or are worked for a commitment, at most. */
    public int count() {
        return share.length;
    }

    /** Share that one more pass adds to a square already worked {@code worked} times. */
    public double next(int worked) {
        return worked < share.length ? share[worked] : 0;
    }

    /** Share of a square worked so many times. */
    public double upTo(int worked) {
        return sum[Math.min(worked, share.length)];
    }
}
