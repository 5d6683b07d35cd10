package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Stop;
import org.straddle.outlook.itinerary.Itinerary;

/** A stop without a usable time cannot be planned around. */
public final class StopTimesWrong extends ScopedRule<Stop> {

    public StopTimesWrong() {
        super(Scope.STOP, "stop-times-wrong", Severity.BLOCKER, "Every stop ends after it begins");
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        if (Itinerary.window(stop.getArrival(), stop.getDeparture()).isEmpty()) {
            findings.accept(Finding.of(this, "The stop"
                    + (Itinerary.isMissing(stop.getTeam()) ? "" : " of " + Words.name(stop.getTeam()))
                    + (Itinerary.isMissing(stop.getSite()) ? "" : " at " + Words.name(stop.getSite()))
                    + (stop.getArrival() == null ? " has no arrival"
                            : stop.getDeparture() == null ? " has no departure"
                                    : " ends " + in.words().at(stop.getDeparture()) + ", not after its arrival "
                                            + in.words().at(stop.getArrival()))
                    + ".", stop));
        }
    }
}
