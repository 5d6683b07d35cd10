package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.List;

/**
 * Free time of a team between two things that stay: stops, or the ends of its day.
 *
 * @param day          index of the team day
 * @param fromPlace    where the team is before
 * @param freeAt       leaves there no earlier
 * @param toPlace      where it has to be after
 * @param dueAt        arrives there no later
 * @param betweenFixed whether both sides are fixed stays or ends of the day
 */
public record Gap(int day, int fromPlace, int freeAt, int toPlace, int dueAt, boolean betweenFixed) {

    /** The gaps before, between and after the stays of a day. */
    public static List<Gap> between(PlanProblem problem, int day, List<Stay> stays) {
        PlanDay route = problem.days().get(day);
        List<Gap> gaps = new ArrayList<>();
        int place = route.startPlace();
        int free = route.from();
        boolean fixed = true;
        for (Stay stay : stays) {
            gaps.add(new Gap(day, place, free, stay.site(), firstSecond(stay), fixed && stay.fixed().isPresent()));
            place = stay.site();
            free = lastSecond(stay);
            fixed = stay.fixed().isPresent();
        }
        gaps.add(new Gap(day, place, free, route.endPlace(), route.until(), fixed));
        return gaps;
    }

    /** A fixed turn may stick out of its fixed stop: the team is busy all the same. */
    private static int firstSecond(Stay stay) {
        return stay.fixedTurns().stream().mapToInt(Chance::start).reduce(stay.arrival(), Math::min);
    }

    private static int lastSecond(Stay stay) {
        return stay.fixedTurns().stream().mapToInt(Chance::end).reduce(stay.departure(), Math::max);
    }
}
