package org.straddle.daysheet.fits;

import java.util.Optional;

import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.TurnGap;
import org.straddle.outlook.itinerary.Work;
import org.straddle.words.Catalogue;

/** What two turns have against each other. */
final class Meeting {

    private static final Catalogue TEXTS = Catalogue.of(Meeting.class);

    private Meeting() {
    }

    /** Two turns of one team need the gap of the event's policy between them. */
    static Optional<Obstacle> gap(Outlook outlook, Work work, Work other) {
        TurnGap gap = TurnGap.of(outlook.policies());
        return work.team() != other.team() || !gap.isBroken(work.window(), other.window()) ? Optional.empty()
                : Optional.of(new Obstacle(PlanRule.TURNS_TOO_CLOSE, TEXTS.text("meeting.gap",
                        "bird", Naming.name(other.bird()), "times", Say.during(other.window()),
                        "need", Say.need(gap.least()))));
    }

    /** Two teams cannot talk through a bird with a single channel while it hears both. */
    static Optional<Obstacle> channel(Outlook outlook, Work work, Work other) {
        return SharedTurns.onOneChannel(outlook, work, other).map(shared -> new Obstacle(PlanRule.ONE_CHANNEL,
                TEXTS.text("meeting.channel", "team", Say.team(other.team()), "bird", Naming.name(work.bird()),
                        "times", Say.during(shared))));
    }

    /** Two teams on one passband need frequencies of their own. */
    static Optional<Obstacle> frequency(Outlook outlook, Work work, Work other) {
        return SharedTurns.onSameFrequency(outlook, work, other).map(shared -> new Obstacle(PlanRule.SAME_FREQUENCY,
                TEXTS.text("meeting.frequency", "team", Say.team(other.team()), "bird", Naming.name(work.bird()),
                        "times", Say.during(shared))));
    }
}
