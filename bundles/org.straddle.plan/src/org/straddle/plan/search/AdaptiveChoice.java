package org.straddle.plan.search;

import java.util.Arrays;
import java.util.Random;

/**
 * Chooses among ways to go on by how well each did lately (roulette wheel with adaptive weights, see the package's page:
 * Ropke and Pisinger). Every way keeps a chance, since what helps late in a search may be of no use early.
 */
final class AdaptiveChoice {

    /** Rewards: the way led to the best plan so far, to a better one than before, to one that was accepted. */
    static final double BEST = 20;
    static final double BETTER = 6;
    static final double ACCEPTED = 1;

    /** Choices between two looks at the rewards. */
    private static final int SEGMENT = 200;

    /** Of the weight that rewards of the last segment make. */
    private static final double REACTION = 0.2;

    /** Of the mean weight: no way has less. */
    private static final double LEAST = 0.2;

    private final double[] weight;
    private final double[] rewards;
    private final int[] uses;
    private int choices;

    AdaptiveChoice(int ways) {
        weight = new double[ways];
        Arrays.fill(weight, 1);
        rewards = new double[ways];
        uses = new int[ways];
    }

    int pick(Random random) {
        double at = random.nextDouble() * Arrays.stream(weight).sum();
        int way = 0;
        while (way < weight.length - 1 && at >= weight[way]) {
            at -= weight[way++];
        }
        return way;
    }

    /** What a way that was picked brought; 0 for nothing. */
    void reward(int way, double reward) {
        rewards[way] += reward;
        uses[way]++;
        if (++choices % SEGMENT == 0) {
            adapt();
        }
    }

    private void adapt() {
        double all = Arrays.stream(rewards).sum() / SEGMENT;
        for (int way = 0; way < weight.length && all > 0; way++) {
            if (uses[way] > 0) {
                double lately = rewards[way] / uses[way] / all;
                weight[way] = Math.max(LEAST, (1 - REACTION) * weight[way] + REACTION * lately);
            }
        }
        Arrays.fill(rewards, 0);
        Arrays.fill(uses, 0);
    }

    @Override
    public String toString() {
        return Arrays.toString(weight);
    }
}
