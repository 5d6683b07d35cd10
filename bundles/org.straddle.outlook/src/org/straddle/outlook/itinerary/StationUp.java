package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

import org.straddle.outlook.PolicyFigures;
import org.straddle.sky.Window;

/**
 * The time within a stop in which a station can work.
 *
 * @param setUp    from arrival until it can work
 * @param takeDown from the last turn until the team can leave
 */
public record StationUp(Duration setUp, Duration takeDown) {

    public static StationUp of(PolicyFigures policies) {
        return new StationUp(policies.setUp(), policies.takeDown());
    }

    /** The first moment at which it can work. */
    public Instant ready(Window stop) {
        return stop.start().plus(setUp);
    }

    /** The moment at which it has to come down. */
    public Instant packing(Window stop) {
        return stop.end().minus(takeDown);
    }

    /** What a turn breaks in a stop: up to two rules, when it is at odds with the stop at both ends. */
    public Set<PlanRule> broken(Window stop, Window turn) {
        Set<PlanRule> broken = EnumSet.noneOf(PlanRule.class);
        if (!stop.contains(turn)) {
            broken.add(PlanRule.TURN_OUTSIDE_STOP);
        }
        if (turn.start().isBefore(ready(stop)) && stop.contains(turn.start())) {
            broken.add(PlanRule.TURN_BEFORE_SET_UP);
        }
        if (turn.end().isAfter(packing(stop)) && !turn.end().isAfter(stop.end())) {
            broken.add(PlanRule.TURN_AFTER_TAKE_DOWN);
        }
        return broken;
    }

    /** The shortest stop that a turn fits into. */
    public Window around(Window turn) {
        return new Window(turn.start().minus(setUp), turn.end().plus(takeDown));
    }
}
