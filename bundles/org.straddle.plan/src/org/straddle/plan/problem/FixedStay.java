package org.straddle.plan.problem;

import java.util.List;

/**
 * A stop that the planner may not move. It may only work more passes in it. Times are seconds from the
 * problem's origin.
 *
 * @param day       index of the team day it belongs to, or {@link #NO_DAY}: then it only stands in the way of
 *                  others
 * @param turns     fixed as well, in order
 */
public record FixedStay(int day, int site, int arrival, int departure, List<Chance> turns) {

    public static final int NO_DAY = -1;

    public FixedStay {
        turns = List.copyOf(turns);
    }
}
