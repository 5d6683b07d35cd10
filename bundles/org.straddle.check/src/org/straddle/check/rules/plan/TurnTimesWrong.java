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

/** A turn without a usable time cannot be worked. */
public final class TurnTimesWrong extends ScopedRule<Stop> {

    public TurnTimesWrong() {
        super(Scope.STOP, CheckRule.TURN_TIMES_WRONG.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        stop.getTurns().stream().filter(turn -> Itinerary.window(turn.getStart(), turn.getEnd()).isEmpty())
                .forEach(turn -> findings.accept(Finding.of(this, Statement.of("turnTimesWrong.turn",
                        "bird", Itinerary.isMissing(turn.getBird()) ? "" : Statement.of("turnTimesWrong.on",
                        "bird", turn.getBird()), "end", turn.getStart() == null
                        ? Statement.of("turnTimesWrong.hasStart") : turn.getEnd() == null
                        ? Statement.of("turnTimesWrong.hasEnd") : Statement.of("turnTimesWrong.endsNotAfter",
                        "end", turn.getEnd(), "start", turn.getStart())), turn)));
    }
}
