package org.straddle.plan.problem;

import java.util.Comparator;
import java.util.List;

/**
 * One team out on one day. Times are seconds from the problem's origin, places are indices into the
 * {@link RoadTable}.
 *
 * @param team         index of the team
 * @param from         leaves the start place no earlier
 * @param until        is at the end place no later
 * @param drivingLimit longest driving without breaks, seconds
 * @param pauses       times at which the team does not drive, in order, none overlapping another
 */
public record PlanDay(int team, int from, int until, int startPlace, int endPlace, int drivingLimit, List<Pause> pauses) {

    /** Wherever it is then, the team stays there. */
    public record Pause(int from, int until) {
    }

    public PlanDay {
        pauses = pauses.stream().sorted(Comparator.comparingInt(Pause::from)).toList();
    }

    /** A day without pauses. */
    public PlanDay(int team, int from, int until, int startPlace, int endPlace, int drivingLimit) {
        this(team, from, until, startPlace, endPlace, drivingLimit, List.of());
    }

    /** When a drive of so many seconds is over that begins no earlier than this. */
    public int arrival(int departure, int seconds) {
        int at = departure;
        int left = seconds;
        for (Pause pause : pauses) {
            if (left > 0 && at < pause.until) {
                int free = Math.max(0, pause.from - at);
                if (left <= free) {
                    return at + left;
                }
                left -= free;
                at = pause.until;
            }
        }
        return at + left;
    }

    /** When a drive of so many seconds has to begin that is over no later than this. */
    public int departure(int arrival, int seconds) {
        int at = arrival;
        int left = seconds;
        for (int i = pauses.size() - 1; i >= 0; i--) {
            Pause pause = pauses.get(i);
            if (left > 0 && at > pause.from) {
                int free = Math.max(0, at - pause.until);
                if (left <= free) {
                    return at - left;
                }
                left -= free;
                at = pause.from;
            }
        }
        return at - left;
    }
}
