package org.straddle.daysheet.fits;

import java.time.Duration;
import java.util.Optional;

import org.straddle.model.Access;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.things.ThingText;

/** What two turns have against each other. */
final class Meeting {

    private Meeting() {
    }

    /** Two turns of one team need the gap of the event's policy between them. */
    static Optional<Obstacle> gap(Outlook outlook, Work work, Work other) {
        Duration gap = outlook.policies().turnGap();
        boolean apart = !work.window().start().isBefore(other.window().end().plus(gap))
                || !other.window().start().isBefore(work.window().end().plus(gap));
        return work.team() != other.team() || apart ? Optional.empty() : Optional.of(new Obstacle("turns-too-close",
                "turn on " + ThingText.of(other.bird()) + " is at " + Say.during(other.window())
                        + "; the gap between turns is " + Say.need(gap)));
    }

    /** Two teams cannot talk through a bird with a single channel while it hears both. */
    static Optional<Obstacle> channel(Outlook outlook, Work work, Work other) {
        return work.bird() != other.bird() || work.bird().getAccess() != Access.SINGLE_CHANNEL ? Optional.empty()
                : SharedTurns.of(outlook, work, other).map(shared -> new Obstacle("one-channel", Say.team(other.team())
                        + " uses the one channel of " + ThingText.of(work.bird()) + ", " + Say.during(shared)));
    }

    /** Two teams on one passband need frequencies of their own. */
    static Optional<Obstacle> frequency(Outlook outlook, Work work, Work other) {
        return work.bird() != other.bird() || work.bird().getAccess() != Access.PASSBAND
                || !SharedTurns.agreedOnSame(work, other) ? Optional.empty()
                : SharedTurns.of(outlook, work, other).map(shared -> new Obstacle("same-frequency",
                        Say.team(other.team()) + " is on the same frequency of " + ThingText.of(work.bird()) + ", "
                                + Say.during(shared)));
    }
}
