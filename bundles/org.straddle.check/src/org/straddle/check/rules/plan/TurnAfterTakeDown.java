package org.straddle.check.rules.plan;

import java.time.Duration;
import java.time.Instant;
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
import org.straddle.sky.Window;

/** The policy says how long a team needs from the last turn until it can leave. */
public final class TurnAfterTakeDown extends ScopedRule<Stay> {

    private static final Duration DAY = Duration.ofDays(1);

    public TurnAfterTakeDown() {
        super(Scope.STAY, PlanRule.TURN_AFTER_TAKE_DOWN.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        StationUp station = StationUp.of(in.policies());
        Instant packing = station.packing(stay.window());
        for (Work work : stay.turns()) {
            if (station.broken(stay.window(), work.window()).contains(PlanRule.TURN_AFTER_TAKE_DOWN)) {
                Window rest = new Window(packing.minus(DAY), packing);
                findings.accept(Finding.of(this, Statement.of("turnAfterTakeDown.leavesNeedsTake", "team", stay.team(),
                        "site", stay.site(), "end", stay.window().end(), "takeDown", station.takeDown(),
                        "bird", work.bird(), "end2", work.window().end()), work.turn(), stay.stop())
                        .at(work.window().end())
                        .fixedBy(TrimTurn.to(rest, work, Statement.of("turnAfterTakeDown.endBeforeTake"), in.policies())));
            }
        }
    }
}
