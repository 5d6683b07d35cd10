package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.straddle.plan.problem.PlanProblem;

/** What holding the squares of one site costs, summed from the beginning of the event up to any second. */
final class HoldPrices {

    private final List<Integer> seconds = new ArrayList<>();
    private final List<Double> sums = new ArrayList<>();

    private HoldPrices() {
    }

    static List<HoldPrices> bySite(PlanProblem problem, Prices prices, List<Prices.Hold> holds) {
        List<Integer> paid = new ArrayList<>();
        for (int hold = 0; hold < prices.hold().length; hold++) {
            if (prices.hold()[hold] > 0) {
                paid.add(hold);
            }
        }
        paid.sort(Comparator.comparingInt(hold -> holds.get(hold).second()));
        List<HoldPrices> bySite = new ArrayList<>();
        for (List<Integer> squares : problem.squaresOfSite()) {
            HoldPrices ofSite = new HoldPrices();
            double sum = 0;
            for (int hold : paid) {
                if (squares.contains(holds.get(hold).square())) {
                    sum += prices.hold()[hold];
                    ofSite.seconds.add(holds.get(hold).second());
                    ofSite.sums.add(sum);
                }
            }
            bySite.add(ofSite);
        }
        return bySite;
    }

    /** Prices of all holds before this second. */
    double until(int second) {
        int index = seconds.size();
        while (index > 0 && seconds.get(index - 1) >= second) {
            index--;
        }
        return index == 0 ? 0 : sums.get(index - 1);
    }
}
