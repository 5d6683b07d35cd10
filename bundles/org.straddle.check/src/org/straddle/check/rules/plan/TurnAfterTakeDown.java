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
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/** The policy says how long a team needs from the last turn until it can leave. */
public final class TurnAfterTakeDown extends ScopedRule<Stay> {

    private static final Duration DAY = Duration.ofDays(1);

    public TurnAfterTakeDown() {
        super(Scope.STAY, "turn-after-take-down", Severity.BLOCKER, "There is time to take the station down");
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        Words words = in.words();
        Duration takeDown = in.policies().takeDown();
        Instant packing = stay.window().end().minus(takeDown);
        for (Work work : stay.turns()) {
            if (work.window().end().isAfter(packing) && !work.window().end().isAfter(stay.window().end())) {
                Window rest = new Window(packing.minus(DAY), packing);
                findings.accept(Finding.of(this, Words.sentence(Words.name(stay.team())) + " leaves "
                        + Words.name(stay.site()) + " " + words.at(stay.window().end()) + " and needs "
                        + Words.length(takeDown) + " to take down, but the turn on " + Words.name(work.bird())
                        + " ends " + words.at(work.window().end()) + ".", work.turn(), stay.stop())
                        .at(work.window().end())
                        .mendedBy(TrimTurn.to(rest, work, "end before the take-down", in.policies())));
            }
        }
    }
}
