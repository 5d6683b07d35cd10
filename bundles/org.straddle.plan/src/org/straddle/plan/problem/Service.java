package org.straddle.plan.problem;

import java.util.Arrays;

/**
 * What a turn is to the chasers: for each group the probability that it serves one who needs a square of its site.
 * Immutable; equal by value.
 */
public final class Service {

    private final double[] probability;
    private final double[] amount;

    private Service(double[] probability) {
        this.probability = probability;
        amount = Arrays.stream(probability).map(p -> -Math.log1p(-p)).toArray();
    }

    /** @param probability by group, 0 to 1 @throws IllegalArgumentException when one is not */
    public static Service of(double... probability) {
        for (double p : probability) {
            if (!(p >= 0 && p <= 1)) {
                throw new IllegalArgumentException("no probability: " + p);
            }
        }
        return new Service(probability.clone());
    }

    /** 0 to 1. */
    public double probability(int group) {
        return probability[group];
    }

    /** −ln(1 − p): amounts of several turns add up. */
    public double amount(int group) {
        return amount[group];
    }

    public int groups() {
        return probability.length;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Service service && Arrays.equals(probability, service.probability);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(probability);
    }

    @Override
    public String toString() {
        return Arrays.toString(probability);
    }
}
