package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** A stop without a usable time cannot be planned around. */
final class StopTimesWrong extends NamedRule {

    StopTimesWrong() {
        super("stop-times-wrong", Severity.BLOCKER, "Every stop ends after it begins");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.stops(outlook.event())
                .filter(stop -> Itinerary.window(stop.getArrival(), stop.getDeparture()).isEmpty())
                .forEach(stop -> findings.accept(Finding.of(this, "The stop"
                        + (Itinerary.isMissing(stop.getTeam()) ? "" : " of " + Words.name(stop.getTeam()))
                        + (Itinerary.isMissing(stop.getSite()) ? "" : " at " + Words.name(stop.getSite()))
                        + (stop.getArrival() == null ? " has no arrival"
                                : stop.getDeparture() == null ? " has no departure"
                                        : " ends " + words.at(stop.getDeparture()) + ", not after its arrival "
                                                + words.at(stop.getArrival()))
                        + ".", stop)));
    }
}
