package org.straddle.plan.bound;

import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.StationTimes;
import org.straddle.plan.problem.Window;

/**
 * What a day can be paid at most from a site and a moment on: worked out from the end of the day backwards, in steps of
 * time, as if a step had just begun. A site may be visited again and again, but not at once on the way back from the next
 * (<em>2-cycle elimination</em>).
 *
 * <p>N. Christofides, A. Mingozzi, P. Toth: Exact algorithms for the vehicle routing problem, based on spanning tree and
 * shortest path relaxations. Mathematical Programming 20 (1981) 255-282.
 */
final class CompletionBounds {

    private static final int MOST_STEPS = 600;

    /** Moves looked at in the time that a label takes. */
    private static final int MOVES_PER_LABEL = 500;

    private static final int NONE = -1;

    private final PlanProblem problem;
    private final StationTimes times;
    private final PlanDay route;
    private final int day;
    private final boolean pauses;
    private final int step;
    // By step and site: the best and whereto, and the best to another site.
    private final double[][] best;
    private final short[][] to;
    private final double[][] second;

    CompletionBounds(PlanProblem problem, Window[] windows, PlanDay route, int day, double[] pay, double secondPrice) {
        this.problem = problem;
        times = problem.times();
        this.route = route;
        this.day = day;
        pauses = !route.pauses().isEmpty();
        int length = route.until() - route.from() + 1;
        step = Math.max(1, Math.min(leastMove(windows), length / MOST_STEPS + 1));
        int steps = length / step + 1;
        if (steps > 4 * MOST_STEPS) { // sites on the same spot: no step is short enough
            best = null;
            to = null;
            second = null;
            return;
        }
        best = new double[steps][windows.length];
        to = new short[steps][windows.length];
        second = new double[steps][windows.length];
        for (int k = steps - 1; k >= 0; k--) {
            for (int site = 0; site < windows.length; site++) {
                if (windows[site] != null) {
                    fill(k, site, windows, pay, secondPrice);
                }
            }
        }
    }

    private int leastMove(Window[] windows) {
        int least = Integer.MAX_VALUE;
        for (int a = 0; a < windows.length; a++) {
            for (int b = 0; b < windows.length; b++) {
                if (a != b && windows[a] != null && windows[b] != null) {
                    least = Math.min(least, problem.leastSeconds(a, b) + times.setUp() + windows[b].seconds() + times.takeDown());
                }
            }
        }
        return least;
    }

    private void fill(int k, int site, Window[] windows, double[] pay, double secondPrice) {
        int leaving = route.from() + k * step;
        double home = arrival(site, leaving, route.endPlace()) <= route.until()
                ? -secondPrice * problem.roads().drivingSeconds(site, route.endPlace()) : Double.NEGATIVE_INFINITY;
        double one = home;
        double other = home;
        int where = NONE;
        for (int w = 0; w < windows.length; w++) {
            if (w == site || windows[w] == null) {
                continue;
            }
            int begin = Math.max(windows[w].opens(), ready(site, leaving, w));
            if (begin > windows[w].closes()) {
                continue;
            }
            double value = pay[w] - secondPrice * problem.roads().drivingSeconds(site, w)
                    + after(w, begin + windows[w].seconds() + times.takeDown(), site);
            if (value > one) {
                other = one;
                one = value;
                where = w;
            } else {
                other = Math.max(other, value);
            }
        }
        best[k][site] = one;
        to[k][site] = (short) where;
        second[k][site] = other;
    }

    private int arrival(int from, int leaving, int place) {
        return pauses ? problem.arrival(day, from, leaving, place) : leaving + problem.leastSeconds(from, place);
    }

    /** When work can begin at a site for a team that leaves a place then. */
    int ready(int from, int leaving, int site) {
        return arrival(from, leaving, site) + times.setUp();
    }

    /** How much work they were, in labels. */
    long work() {
        return best == null ? 0 : (long) best.length * best[0].length * best[0].length / MOVES_PER_LABEL;
    }

    /**
     * What a day is paid at most after a site that it leaves then, up to its end.
     *
     * @param before where it was before the site and does not go next; negative for nowhere
     * @return negative infinity when it cannot get home
     */
    double after(int site, int leaving, int before) {
        if (best == null) {
            return arrival(site, leaving, route.endPlace()) <= route.until() ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        int k = (leaving - route.from()) / step;
        if (k >= best.length || arrival(site, leaving, route.endPlace()) > route.until()) {
            return Double.NEGATIVE_INFINITY;
        }
        return before != NONE && to[k][site] == before ? second[k][site] : best[k][site];
    }
}
