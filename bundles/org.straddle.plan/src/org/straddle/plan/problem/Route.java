package org.straddle.plan.problem;

import java.util.List;

/**
 * One team's whole day: a column of the bound's master problem.
 *
 * @param stays fixed ones included, by arrival
 */
public record Route(int day, List<Stay> stays) {

    public Route {
        stays = List.copyOf(stays);
    }

    /** At the wheel, without breaks. */
    public int drivingSeconds(PlanProblem problem) {
        PlanDay route = problem.days().get(day);
        int seconds = 0;
        int place = route.startPlace();
        for (Stay stay : stays) {
            seconds += problem.roads().drivingSeconds(place, stay.site());
            place = stay.site();
        }
        return seconds + problem.roads().drivingSeconds(place, route.endPlace());
    }

    /** What counts against the limit of the day: driving that only fixed stays cause is not held against a plan. */
    public int limitedDrivingSeconds(PlanProblem problem) {
        int driving = drivingSeconds(problem);
        boolean free = stays.stream().anyMatch(stay -> stay.fixed().isEmpty());
        return free ? driving : Math.min(driving, problem.days().get(day).drivingLimit());
    }

    /**
     * Whether the day can be driven: every drive fits that the planner has a hand in, so does the driving in all, and nobody
     * needs relief.
     * What is impossible because of fixed stays alone is not held against the plan.
     */
    public boolean canBeDriven(PlanProblem problem) {
        for (Gap gap : Gap.between(problem, day, stays)) {
            if (!gap.betweenFixed()
                    && problem.arrival(day, gap.fromPlace(), gap.freeAt(), gap.toPlace()) > gap.dueAt()) {
                return false;
            }
        }
        return keepsDrivingLimit(problem) && keepsRelief(problem);
    }

    /** Whether no team is longer at one site than it may be. */
    public boolean keepsRelief(PlanProblem problem) {
        return !problem.relief().isNeeded() || Sitting.of(problem, day, stays).stream()
                .allMatch(sitting -> problem.needsNoRelief(day, sitting.site(), sitting.from(), sitting.until()));
    }

    /** Worth of the committed turns it works. */
    public double committed(PlanProblem problem) {
        return problem.commitments().isEmpty() ? 0
                : stays.stream().mapToDouble(problem.commitments()::worth).sum();
    }

    public boolean keepsDrivingLimit(PlanProblem problem) {
        return limitedDrivingSeconds(problem) <= problem.days().get(day).drivingLimit();
    }
}
