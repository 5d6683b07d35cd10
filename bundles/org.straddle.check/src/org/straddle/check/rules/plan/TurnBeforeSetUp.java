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

/** The policy says how long a team needs from arrival until it can work. */
public final class TurnBeforeSetUp extends ScopedRule<Stay> {

    private static final Duration DAY = Duration.ofDays(1);

    public TurnBeforeSetUp() {
        super(Scope.STAY, "turn-before-set-up", Severity.BLOCKER, "The station is up before the first turn");
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        Words words = in.words();
        Duration setUp = in.policies().setUp();
        Instant ready = stay.window().start().plus(setUp);
        for (Work work : stay.turns()) {
            if (work.window().start().isBefore(ready) && stay.window().contains(work.window().start())) {
                Window rest = Window.of(ready, DAY);
                findings.accept(Finding.of(this, Words.sentence(Words.name(stay.team())) + " arrives at "
                        + Words.name(stay.site()) + " " + words.at(stay.window().start()) + " and is ready "
                        + words.at(ready) + ", after the turn on " + Words.name(work.bird()) + " begins, "
                        + words.at(work.window().start()) + ".", work.turn(), stay.stop())
                        .at(work.window().start())
                        .mendedBy(TrimTurn.to(rest, work, "begin when the station is ready", in.policies())));
            }
        }
    }
}
