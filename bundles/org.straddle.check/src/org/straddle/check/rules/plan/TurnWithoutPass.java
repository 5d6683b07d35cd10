package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TurnPass;
import org.straddle.outlook.itinerary.Work;

/** The bird never comes above the site's horizon during the turn. */
public final class TurnWithoutPass extends ScopedRule<Stay> {

    public TurnWithoutPass() {
        super(Scope.STAY, PlanRule.TURN_WITHOUT_PASS.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        for (Work work : stay.turns()) {
            if (TurnPass.isMissing(in.outlook(), work)) {
                findings.accept(Finding.of(this, Statement.of("turnWithoutPass.notAboveHorizon", "bird", work.bird(),
                        "site", work.site(), "turn", work), work.turn()).at(work.window().start())
                        .fixedBy(RemoveTurns.of(work)));
            }
        }
    }
}
