package org.straddle.plan.problem;

/**
 * What free passes can add to each square, beyond its fixed turns. With falling repeat worths the worth of x free
 * passes from a square is a sum over k of {@code step(k) · min(x, k)}, with no step below zero: this form is what
 * the bound is made of.
 */
public final class OpenTiers {

    private final double[][] next;
    private final double[][] step;
    private final double base;

    public OpenTiers(PlanProblem problem) {
        int[] fixed = new int[problem.squareCount()];
        for (FixedStay stay : problem.fixed()) {
            problem.squaresOfSite().get(stay.site()).forEach(square -> fixed[square] += stay.turns().size());
        }
        next = new double[fixed.length][];
        step = new double[fixed.length][];
        double sum = 0;
        for (int square = 0; square < fixed.length; square++) {
            double demand = problem.demand().get(square);
            sum += demand * problem.tiers().upTo(fixed[square]);
            int open = demand > 0 ? Math.max(0, problem.tiers().count() - fixed[square]) : 0;
            next[square] = new double[open];
            step[square] = new double[open];
            for (int k = open - 1; k >= 0; k--) {
                next[square][k] = demand * problem.tiers().next(fixed[square] + k);
                step[square][k] = next[square][k] - (k + 1 < open ? next[square][k + 1] : 0);
            }
        }
        base = sum;
    }

    /** Worth of the fixed turns. */
    public double base() {
        return base;
    }

    /** How many free passes from a square can be worth anything. */
    public int count(int square) {
        return step[square].length;
    }

    /** Factor of {@code min(passes, k + 1)} in the worth of a square. */
    public double step(int square, int k) {
        return step[square][k];
    }
}
