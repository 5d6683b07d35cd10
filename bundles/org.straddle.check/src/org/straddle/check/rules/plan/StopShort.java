package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.Stay;

/** A stop must last for setting up and taking down; where it has turns, they say more exactly what is missing. */
public final class StopShort extends ScopedRule<Stay> {

    public StopShort() {
        super(Scope.STAY, CheckRule.STOP_SHORT.id(), Severity.WARNING);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        Duration needed = in.policies().setUp().plus(in.policies().takeDown());
        Duration lasts = stay.window().duration();
        if (stay.turns().isEmpty() && lasts.compareTo(needed) < 0) {
            findings.accept(Finding.of(this, Statement.of("stopShort.lastsSettingUp", "stop", stay, "lasts", lasts,
                    "needed", needed), stay.stop())
                    .at(stay.window().start()));
        }
    }
}
