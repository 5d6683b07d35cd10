package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.Relief;
import org.straddle.outlook.itinerary.Stay;

/** Attention fades after hours at one roadside. */
public final class ReliefMissing extends ScopedRule<Stay> {

    public ReliefMissing() {
        super(Scope.STAY, CareRule.RELIEF_MISSING.id(), Severity.ADVICE);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        if (Relief.isMissing(stay, in.hold())) {
            findings.accept(Finding.of(this, Statement.of("reliefMissing.stays", "team", stay.team(), "site", stay.site(),
                    "length", stay.window().duration(), "during", stay.window(), "limit", in.hold().longestStop()), stay.stop())
                    .at(stay.window().start()));
        }
    }
}
