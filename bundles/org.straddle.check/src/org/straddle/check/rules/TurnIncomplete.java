package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** A turn must say which bird is worked. */
final class TurnIncomplete extends NamedRule {

    TurnIncomplete() {
        super("turn-incomplete", Severity.WARNING, "Every turn names a bird");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.stops(outlook.event()).flatMap(stop -> stop.getTurns().stream())
                .filter(turn -> Itinerary.isMissing(turn.getBird()))
                .forEach(turn -> findings.accept(Finding.of(this, "A turn"
                        + (turn.getStart() == null ? "" : ", " + new Words(outlook.zone()).at(turn.getStart()) + ",")
                        + " names no bird.", turn)));
    }
}
