package org.straddle.plan.bound;

import java.util.Arrays;
import java.util.Random;

import org.straddle.plan.problem.BirdMoments;

/**
 * What routes pay each other for what they share: prices of a {@link RouteMaster}'s rows, never negative. Any such
 * prices give a valid bound; good ones give a tight one.
 *
 * @param tier    by square and k: what raising {@code min(passes, k + 1)} by one is worth
 * @param moment  by bird moment: what one team's turn over it costs
 * @param driving by day: what a second at the wheel costs on top of the true price
 * @param hold    by hold: what a stay over it costs; as many as there were when the prices were made
 */
record Prices(double[][] tier, double[] moment, double[] driving, double[] hold) {

    /** A moment at which a square was held twice. */
    record Hold(int square, int second) {
    }

    /** Each price changed by a random share of itself. */
    Prices varied(Random random, double most) {
        double[][] variedTier = new double[tier.length][];
        for (int square = 0; square < tier.length; square++) {
            variedTier[square] = varied(tier[square], random, most);
        }
        return new Prices(variedTier, varied(moment, random, most), varied(driving, random, most),
                varied(hold, random, most));
    }

    private static double[] varied(double[] prices, Random random, double most) {
        return Arrays.stream(prices).map(price -> price * (1 + most * (2 * random.nextDouble() - 1))).toArray();
    }

    /** What the next pass from a square is worth after so many in a stop. */
    double pay(int square, int worked) {
        double pay = 0;
        for (int k = worked; k < tier[square].length; k++) {
            pay += tier[square][k];
        }
        return pay;
    }

    /** By passes already worked: what all further passes from a square can pay. */
    double[] remaining(int square) {
        double[] remaining = new double[tier[square].length + 1];
        for (int k = tier[square].length - 1; k >= 0; k--) {
            remaining[k] = remaining[k + 1] + pay(square, k);
        }
        return remaining;
    }

    /** What the turn of a chance costs. */
    double ofChance(BirdMoments moments, int chance) {
        double sum = 0;
        for (int m : moments.of(chance)) {
            sum += moment[m];
        }
        return sum;
    }
}
