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

/** A turn must say which bird is worked. */
public final class TurnIncomplete extends ScopedRule<Stop> {

    public TurnIncomplete() {
        super(Scope.STOP, CheckRule.TURN_INCOMPLETE.id(), Severity.WARNING);
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        stop.getTurns().stream().filter(turn -> Itinerary.isMissing(turn.getBird()))
                .forEach(turn -> findings.accept(Finding.of(this, turn.getStart() == null
                        ? Statement.of("turnIncomplete.noBird")
                        : Statement.of("turnIncomplete.noBirdAt", "start", turn.getStart()), turn)));
    }
}
