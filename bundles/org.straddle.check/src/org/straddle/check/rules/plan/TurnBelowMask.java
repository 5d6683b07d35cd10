package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.TrimTurn;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TurnPass;
import org.straddle.outlook.itinerary.Work;

/** Part of the turn has the bird behind the ground, woods or walls that the horizon mask records. */
public final class TurnBelowMask extends ScopedRule<Stay> {

    public TurnBelowMask() {
        super(Scope.STAY, PlanRule.TURN_BELOW_MASK.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        for (Work work : stay.turns()) {
            TurnPass.left(in.outlook(), work).ifPresent(pass -> findings.accept(Finding.of(this,
                    Statement.of("turnBelowMask.reachesOutPass", "turn", work, "site", work.site(),
                            "during", pass), work.turn()).at(work.window().start())
                            .fixedBy(TrimTurn.to(pass, work, Statement.of("turnBelowMask.pass"), in.policies()))));
        }
    }
}
