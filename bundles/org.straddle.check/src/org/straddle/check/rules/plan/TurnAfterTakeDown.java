package org.straddle.check.rules.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.mend.TrimTurn;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/** The policy says how long a team needs from the last turn until it can leave. */
public final class TurnAfterTakeDown extends ScopedRule<Stay> {

    private static final Duration DAY = Duration.ofDays(1);

    public TurnAfterTakeDown() {
        super(Scope.STAY, PlanRule.TURN_AFTER_TAKE_DOWN.id(), Severity.BLOCKER, "There is time to take the station down");
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        Words words = in.words();
        StationUp station = StationUp.of(in.policies());
        Instant packing = station.packing(stay.window());
        for (Work work : stay.turns()) {
            if (station.broken(stay.window(), work.window()).contains(PlanRule.TURN_AFTER_TAKE_DOWN)) {
                Window rest = new Window(packing.minus(DAY), packing);
                findings.accept(Finding.of(this, Words.sentence(Words.name(stay.team())) + " leaves "
                        + Words.name(stay.site()) + " " + words.at(stay.window().end()) + " and needs "
                        + Words.length(station.takeDown()) + " to take down, but the turn on " + Words.name(work.bird())
                        + " ends " + words.at(work.window().end()) + ".", work.turn(), stay.stop())
                        .at(work.window().end())
                        .mendedBy(TrimTurn.to(rest, work, "end before the take-down", in.policies())));
            }
        }
    }
}
