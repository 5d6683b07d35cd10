package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.List;

/**
 * A team at one site for one or more stays that {@link Relief} counts as one. Fixed stays belong to none: nobody asks the
 * planner how long they are.
 */
public record Sitting(int day, int site, int from, int until) {

    /** Of a day, in order. */
    public static List<Sitting> of(PlanProblem problem, int day, List<Stay> stays) {
        List<Sitting> sittings = new ArrayList<>();
        Sitting last = null;
        for (Stay stay : stays) {
            if (stay.fixed().isPresent()) {
                last = null;
                continue;
            }
            boolean goesOn = last != null && last.site == stay.site() && problem.relief().goesOn(last.until, stay.arrival());
            if (goesOn) {
                sittings.remove(sittings.size() - 1);
            }
            last = new Sitting(day, stay.site(), goesOn ? last.from : stay.arrival(), stay.departure());
            sittings.add(last);
        }
        return sittings;
    }

    /** The sitting that ends when a team leaves there, or begins when it comes there; null for none. */
    public static Sitting at(List<Sitting> sittings, int site, int second) {
        for (Sitting sitting : sittings) {
            if (sitting.site == site && (sitting.until == second || sitting.from == second)) {
                return sitting;
            }
        }
        return null;
    }
}
