package org.straddle.plan.search;

import java.util.Arrays;
import java.util.Random;

import org.straddle.plan.problem.PlanProblem;

/**
 * What a refill goes by. The plain taste is the truth; others err on purpose, so that the search comes to
 * plans it would not find by always taking what looks best.
 *
 * @param favour       by site: factor on what it pays, 1 for the truth
 * @param whim         by chance, in the order of the table: another factor, which settles what would pay alike
 * @param pricePerHour what an hour of driving costs
 * @param splitting    whether a team rather leaves a site and returns than stays on when both pay alike, so
 *                     that another may use its squares in between
 * @param order        in which visits without a fixed time go in
 * @param random       for what is left to chance while filling; null for nothing
 */
record Taste(double[] favour, double[] whim, double pricePerHour, boolean splitting, Insertion.Order order, Random random) {

    private static final double FAVOUR = 0.3;
    private static final double WHIM = 0.1;
    private static final double DEAR = 5;

    /** Once in so many times some sites are left to other teams. */
    private static final int LEAVING = 6;

    static Taste plain(PlanProblem problem) {
        return new Taste(ones(problem.siteCount()), ones(problem.chances().size()), problem.drivingPricePerHour(), false,
                Insertion.Order.MOST_FOR_TIME, null);
    }

    private static double[] ones(int length) {
        double[] ones = new double[length];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** Mostly the plain one, with one deviation or another. */
    static Taste random(PlanProblem problem, Taste plain, Random random) {
        double[] favour = random.nextInt(3) == 0
                ? random.doubles(problem.siteCount(), 1 - FAVOUR, 1 + FAVOUR).toArray()
                : plain.favour;
        if (problem.days().size() > 1 && random.nextInt(LEAVING) == 0) {
            favour = Arrays.stream(favour).map(of -> random.nextInt(3) == 0 ? 0 : of).toArray();
        }
        double[] whim = random.nextInt(3) == 0
                ? random.doubles(problem.chances().size(), 1 - WHIM, 1 + WHIM).toArray()
                : plain.whim;
        double price = random.nextInt(4) == 0 ? DEAR * random.nextDouble() : 1;
        boolean splitting = random.nextInt(3) == 0;
        Insertion.Order order = problem.windows().isEmpty() ? Insertion.Order.MOST_FOR_TIME
                : Insertion.Order.values()[random.nextInt(Insertion.Order.values().length)];
        return new Taste(favour, whim, price * problem.drivingPricePerHour(), splitting, order, random);
    }
}
