package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Stop;
import org.straddle.outlook.itinerary.Itinerary;

/** A stop without a usable time cannot be planned around. */
public final class StopTimesWrong extends ScopedRule<Stop> {

    public StopTimesWrong() {
        super(Scope.STOP, CheckRule.STOP_TIMES_WRONG.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        if (Itinerary.window(stop.getArrival(), stop.getDeparture()).isEmpty()) {
            findings.accept(Finding.of(this, Statement.of("stopTimesWrong.stop",
                    "team", Itinerary.isMissing(stop.getTeam()) ? "" : Statement.of("stopTimesWrong.of",
                    "team", stop.getTeam()), "site", Itinerary.isMissing(stop.getSite()) ? ""
                    : Statement.of("stopTimesWrong.at", "site", stop.getSite()),
                    "departure", stop.getArrival() == null
                    ? Statement.of("stopTimesWrong.hasArrival") : stop.getDeparture() == null
                    ? Statement.of("stopTimesWrong.hasDeparture") : Statement.of("stopTimesWrong.endsNotAfter",
                    "departure", stop.getDeparture(), "arrival", stop.getArrival())), stop));
        }
    }
}
