package org.straddle.daysheet.fits;

import java.util.Optional;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.TurnGap;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.things.ThingText;

/** What two turns have against each other. */
final class Meeting {

    private Meeting() {
    }

    /** Two turns of one team need the gap of the event's policy between them. */
    static Optional<Obstacle> gap(Outlook outlook, Work work, Work other) {
        TurnGap gap = TurnGap.of(outlook.policies());
        return work.team() != other.team() || !gap.isBroken(work.window(), other.window()) ? Optional.empty()
                : Optional.of(new Obstacle(PlanRule.TURNS_TOO_CLOSE, "turn on " + ThingText.of(other.bird()) + " is at "
                        + Say.during(other.window()) + "; the gap between turns is " + Say.need(gap.least())));
    }

    /** Two teams cannot talk through a bird with a single channel while it hears both. */
    static Optional<Obstacle> channel(Outlook outlook, Work work, Work other) {
        return SharedTurns.onOneChannel(outlook, work, other).map(shared -> new Obstacle(PlanRule.ONE_CHANNEL,
                Say.team(other.team()) + " uses the one channel of " + ThingText.of(work.bird()) + ", "
                        + Say.during(shared)));
    }

    /** Two teams on one passband need frequencies of their own. */
    static Optional<Obstacle> frequency(Outlook outlook, Work work, Work other) {
        return SharedTurns.onSameFrequency(outlook, work, other).map(shared -> new Obstacle(PlanRule.SAME_FREQUENCY,
                Say.team(other.team()) + " is on the same frequency of " + ThingText.of(work.bird()) + ", "
                        + Say.during(shared)));
    }
}
