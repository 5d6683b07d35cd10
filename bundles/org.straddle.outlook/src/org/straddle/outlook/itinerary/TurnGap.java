package org.straddle.outlook.itinerary;

import java.time.Duration;

import org.straddle.outlook.PolicyFigures;
import org.straddle.sky.Window;

/** The time that a team needs from the end of a turn to the start of its next. */
public record TurnGap(Duration least) {

    public static TurnGap of(PolicyFigures policies) {
        return new TurnGap(policies.turnGap());
    }

    /** A turn with the gap after it: two turns of a team are too close when these overlap. */
    public Window claimed(Window turn) {
        return new Window(turn.start(), turn.end().plus(least));
    }

    /** Whether two turns of one team lie too close together, whichever comes first. */
    public boolean isBroken(Window a, Window b) {
        return claimed(a).overlaps(claimed(b));
    }
}
