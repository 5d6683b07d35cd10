package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/** The policy names the least length of a turn. */
public final class TurnShort extends ScopedRule<Stay> {

    public TurnShort() {
        super(Scope.STAY, CheckRule.TURN_SHORT.id(), Severity.ADVICE);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        Duration least = in.policies().minimumTurn();
        for (Work work : stay.turns()) {
            if (work.window().duration().compareTo(least) < 0) {
                findings.accept(Finding.of(this, Statement.of("turnShort.takesEventPlans", "turn", work,
                        "duration", work.window().duration(), "least", least), work.turn())
                        .at(work.window().start()).fixedBy(RemoveTurns.of(work)));
            }
        }
    }
}
