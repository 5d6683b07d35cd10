package org.straddle.plan.bound;

import java.util.Arrays;
import java.util.Random;

import org.straddle.plan.problem.BirdMoments;

/**
 * What routes pay each other for what they share: dual values of a {@link RouteMaster}'s rows, never negative. Any such
 * prices give a valid bound; good ones give a tight one.
 *
 * @param pay     by square and group: what a route is paid for serving it
 * @param moment  by bird moment: what one team's turn over it costs
 * @param driving by day: what a second at the wheel costs on top of the true price
 * @param hold    by hold: what a stay over it costs; as many as there were when the prices were made
 */
record Prices(PayCurve[][] pay, double[] moment, double[] driving, double[] hold) {

    /** A moment at which a square was held twice. */
    record Hold(int square, int second) {
    }

    /** Prices between these and others. @param share of the others, 0 to 1 */
    Prices toward(Prices other, double share) {
        PayCurve[][] between = new PayCurve[pay.length][];
        for (int square = 0; square < pay.length; square++) {
            between[square] = new PayCurve[pay[square].length];
            for (int g = 0; g < between[square].length; g++) {
                between[square][g] = pay[square][g].toward(other.pay[square][g], share);
            }
        }
        return new Prices(between, between(moment, other.moment, share), between(driving, other.driving, share),
                between(hold, other.hold, share));
    }

    /** What one of the two does not price yet is free there. */
    private static double[] between(double[] one, double[] other, double share) {
        double[] between = new double[Math.max(one.length, other.length)];
        for (int i = 0; i < between.length; i++) {
            between[i] = (i < one.length ? (1 - share) * one[i] : 0) + (i < other.length ? share * other[i] : 0);
        }
        return between;
    }

    /** Each price changed by a random share of itself. */
    Prices varied(Random random, double most) {
        PayCurve[][] varied = Arrays.stream(pay).map(ofSquare -> Arrays.stream(ofSquare).map(curve -> {
            double factor = 1 + most * (2 * random.nextDouble() - 1);
            return new PayCurve(curve.priced().stream()
                    .map(one -> new PayCurve.Priced(one.cut(), factor * one.price())).toList());
        }).toArray(PayCurve[]::new)).toArray(PayCurve[][]::new);
        return new Prices(varied, varied(moment, random, most), varied(driving, random, most),
                varied(hold, random, most));
    }

    private static double[] varied(double[] prices, Random random, double most) {
        return Arrays.stream(prices).map(price -> price * (1 + most * (2 * random.nextDouble() - 1))).toArray();
    }

    /** What a square pays at most, whatever is worked from it. */
    double most(int square) {
        return Arrays.stream(pay[square]).mapToDouble(PayCurve::most).sum();
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
