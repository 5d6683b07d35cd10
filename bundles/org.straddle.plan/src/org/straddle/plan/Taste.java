package org.straddle.plan;

import java.util.Arrays;
import java.util.Random;

/**
 * What a refill goes by. The plain taste is the truth; others err on purpose, so that the search comes to
 * plans it would not find by always taking what looks best.
 *
 * @param favour       by site: factor on what it pays, 1 for the truth
 * @param pricePerHour what an hour of driving costs
 * @param splitting    whether a team rather leaves a site and returns than stays on when both pay alike, so
 *                     that another may use its squares in between
 */
record Taste(double[] favour, double pricePerHour, boolean splitting) {

    private static final double FAVOUR = 0.3;
    private static final double DEAR = 5;

    static Taste plain(PlanProblem problem) {
        double[] favour = new double[problem.siteCount()];
        Arrays.fill(favour, 1);
        return new Taste(favour, problem.drivingPricePerHour(), false);
    }

    /** Mostly the plain one, with one deviation or another. */
    static Taste random(PlanProblem problem, Taste plain, Random random) {
        double[] favour = random.nextInt(3) == 0
                ? random.doubles(problem.siteCount(), 1 - FAVOUR, 1 + FAVOUR).toArray()
                : plain.favour;
        double price = random.nextInt(4) == 0 ? DEAR * random.nextDouble() : 1;
        return new Taste(favour, price * problem.drivingPricePerHour(), random.nextInt(3) == 0);
    }
}
