package org.straddle.check.rules.plan;

import java.util.ArrayList;
import java.util.List;
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

/** A stop must say who goes where; other rules pass over one that does not. */
public final class StopIncomplete extends ScopedRule<Stop> {

    public StopIncomplete() {
        super(Scope.STOP, CheckRule.STOP_INCOMPLETE.id(), Severity.WARNING);
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        List<String> missing = new ArrayList<>();
        if (Itinerary.isMissing(stop.getTeam())) {
            missing.add("team");
        }
        if (Itinerary.isMissing(stop.getSite())) {
            missing.add("site");
        }
        if (!missing.isEmpty()) {
            Finding finding = Finding.of(this, Statement.of("stopIncomplete.stopHas",
                    "site", Itinerary.isMissing(stop.getSite()) ? "" : Statement.of("stopIncomplete.at",
                    "site", stop.getSite()), "team", Itinerary.isMissing(stop.getTeam()) ? ""
                    : Statement.of("stopIncomplete.of", "team", stop.getTeam()),
                    "arrival", stop.getArrival() == null ? "" : Statement.of("stopIncomplete.from",
                    "arrival", stop.getArrival()), "missing", missing), stop);
            findings.accept(stop.getArrival() == null ? finding : finding.at(stop.getArrival()));
        }
    }
}
