package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** A turn without a usable time cannot be worked. */
final class TurnTimesWrong extends NamedRule {

    TurnTimesWrong() {
        super("turn-times-wrong", Severity.BLOCKER, "Every turn ends after it begins");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.stops(outlook.event()).flatMap(stop -> stop.getTurns().stream())
                .filter(turn -> Itinerary.window(turn.getStart(), turn.getEnd()).isEmpty())
                .forEach(turn -> findings.accept(Finding.of(this, "The turn"
                        + (Itinerary.isMissing(turn.getBird()) ? "" : " on " + Words.name(turn.getBird()))
                        + (turn.getStart() == null ? " has no start"
                                : turn.getEnd() == null ? " has no end"
                                        : " ends " + words.at(turn.getEnd()) + ", not after its start "
                                                + words.at(turn.getStart()))
                        + ".", turn)));
    }
}
