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
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/** A team works only while it is at the site. */
public final class TurnOutsideStop extends ScopedRule<Stay> {

    public TurnOutsideStop() {
        super(Scope.STAY, PlanRule.TURN_OUTSIDE_STOP.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        StationUp station = StationUp.of(in.policies());
        for (Work work : stay.turns()) {
            if (station.broken(stay.window(), work.window()).contains(PlanRule.TURN_OUTSIDE_STOP)) {
                findings.accept(Finding.of(this, Statement.of("turnOutsideStop.reachesOut", "turn", work,
                        "stop", stay), work.turn(), stay.stop())
                        .at(work.window().start())
                        .fixedBy(TrimTurn.to(stay.window(), work, Statement.of("turnOutsideStop.stop"), in.policies())));
            }
        }
    }
}
