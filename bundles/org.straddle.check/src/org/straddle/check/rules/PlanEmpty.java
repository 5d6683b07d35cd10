package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** An event without a stop sends nobody anywhere. */
final class PlanEmpty extends NamedRule {

    PlanEmpty() {
        super("plan-empty", Severity.WARNING, "The plan has stops");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        if (Itinerary.stops(outlook.event()).findAny().isEmpty()) {
            findings.accept(Finding.of(this,
                    "The plan has no stops yet: place some by hand or let the planner propose them.", outlook.event()));
        }
    }
}
