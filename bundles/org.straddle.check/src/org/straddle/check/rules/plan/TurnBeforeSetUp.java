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

/** The policy says how long a team needs from arrival until it can work. */
public final class TurnBeforeSetUp extends ScopedRule<Stay> {

    private static final Duration DAY = Duration.ofDays(1);

    public TurnBeforeSetUp() {
        super(Scope.STAY, PlanRule.TURN_BEFORE_SET_UP.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        StationUp station = StationUp.of(in.policies());
        Instant ready = station.ready(stay.window());
        for (Work work : stay.turns()) {
            if (station.broken(stay.window(), work.window()).contains(PlanRule.TURN_BEFORE_SET_UP)) {
                Window rest = Window.of(ready, DAY);
                findings.accept(Finding.of(this, Statement.of("turnBeforeSetUp.arrivesReadyAfter", "team", stay.team(),
                        "site", stay.site(), "start", stay.window().start(), "ready", ready, "bird", work.bird(),
                        "start2", work.window().start()), work.turn(), stay.stop())
                        .at(work.window().start())
                        .fixedBy(TrimTurn.to(rest, work, Statement.of("turnBeforeSetUp.beginWhenStation"), in.policies())));
            }
        }
    }
}
