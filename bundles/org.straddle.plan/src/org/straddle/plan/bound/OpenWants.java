package org.straddle.plan.bound;

import java.util.Arrays;

import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Stay;

/** How many chasers still need each square when only the fixed turns are worked. */
final class OpenWants {

    private final double[][] open;
    private final double base;

    OpenWants(PlanProblem problem) {
        open = new double[problem.squareCount()][problem.groupCount()];
        for (int square = 0; square < open.length; square++) {
            for (int g = 0; g < open[square].length; g++) {
                open[square][g] = problem.wants().of(square, g);
            }
        }
        double before = sum();
        for (FixedStay stay : problem.fixed()) {
            double[] left = Stay.unserved(stay.turns(), problem.groupCount());
            for (int square : problem.squaresOfSite().get(stay.site())) {
                for (int g = 0; g < left.length; g++) {
                    open[square][g] *= left[g];
                }
            }
        }
        base = before - sum();
    }

    /** In all. */
    double sum() {
        return Arrays.stream(open).flatMapToDouble(Arrays::stream).sum();
    }

    /** Worth of the fixed turns. */
    double base() {
        return base;
    }

    double of(int square, int group) {
        return open[square][group];
    }
}
