package org.straddle.plan;

import java.util.List;

/**
 * Fills all gaps of a team's day, and works more passes in its fixed stops, within the driving limit.
 *
 * <p>The refill of a gap does not know what other gaps drive. So driving is made dearer until the day keeps
 * its limit; when even that fails, the gaps stay empty.
 */
final class DayFill {

    private static final int DEARER = 4;
    private static final int ATTEMPTS = 8;

    /** An hour of driving costs at least this before it is made dearer: else a free road would stay free. */
    private static final double LEAST_PRICE = 0.01;

    private final PlanProblem problem;
    private final Refill refill;
    private final TurnFill turnFill;

    DayFill(PlanProblem problem) {
        this.problem = problem;
        ChanceTable table = new ChanceTable(problem);
        refill = new Refill(problem, table);
        turnFill = new TurnFill(problem, table);
    }

    /** @param favour by site: factor on what it pays, 1 for the plain truth */
    void fill(Roster roster, int day, double[] favour) {
        for (Stay stay : List.copyOf(roster.day(day))) {
            if (stay.fixed().isPresent() && stay.turns().isEmpty()) {
                turnFill.fill(roster, stay);
            }
        }
        List<Stay> kept = List.copyOf(roster.day(day));
        double pricePerHour = problem.drivingPricePerHour();
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            fillGaps(roster, day, favour, pricePerHour);
            if (roster.drivingSeconds(day) <= problem.days().get(day).drivingLimit()) {
                return;
            }
            roster.restore(day, kept);
            pricePerHour = DEARER * Math.max(pricePerHour, LEAST_PRICE);
        }
    }

    private void fillGaps(Roster roster, int day, double[] favour, double pricePerHour) {
        for (Gap gap : Gap.between(problem, day, roster.day(day))) {
            refill.fill(roster, gap, favour, pricePerHour).forEach(roster::add);
        }
    }
}
