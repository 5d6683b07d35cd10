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

/** A turn without a usable time cannot be worked. */
public final class TurnTimesWrong extends ScopedRule<Stop> {

    public TurnTimesWrong() {
        super(Scope.STOP, "turn-times-wrong", Severity.BLOCKER, "Every turn ends after it begins");
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        stop.getTurns().stream().filter(turn -> Itinerary.window(turn.getStart(), turn.getEnd()).isEmpty())
                .forEach(turn -> findings.accept(Finding.of(this, "The turn"
                        + (Itinerary.isMissing(turn.getBird()) ? "" : " on " + Words.name(turn.getBird()))
                        + (turn.getStart() == null ? " has no start"
                                : turn.getEnd() == null ? " has no end"
                                        : " ends " + in.words().at(turn.getEnd()) + ", not after its start "
                                                + in.words().at(turn.getStart()))
                        + ".", turn)));
    }
}
