package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Event;
import org.straddle.outlook.itinerary.Itinerary;

/** An event without a stop sends nobody anywhere. */
public final class PlanEmpty extends ScopedRule<Event> {

    public PlanEmpty() {
        super(Scope.STOPS, CheckRule.PLAN_EMPTY.id(), Severity.WARNING);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        if (Itinerary.stops(event).findAny().isEmpty()) {
            findings.accept(Finding.of(this,
                    Statement.of("planEmpty.planHasStops"), event));
        }
    }
}
