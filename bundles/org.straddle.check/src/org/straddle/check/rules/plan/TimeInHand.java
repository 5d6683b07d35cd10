package org.straddle.check.rules.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.InHand;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;

/** A drive that takes a little longer than usual must not cost the first turn. */
public final class TimeInHand extends ScopedRule<Team> {

    public TimeInHand() {
        super(Scope.TEAM, CareRule.TIME_IN_HAND.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (Stay stay : in.itinerary().of(team)) {
            Duration lacking = InHand.lacking(stay, in.policies(), in.hold());
            Duration inHand = InHand.of(stay, in.policies()).orElse(Duration.ZERO);
            if (!lacking.isZero() && !inHand.isNegative()) {
                Instant ready = StationUp.of(in.policies()).ready(stay.window());
                Finding finding = Finding.of(this, Statement.of("timeInHand.short", "team", team, "site", stay.site(),
                        "ready", ready, "inHand", inHand, "least", in.hold().inHand()), stay.stop()).at(ready);
                findings.accept(ShiftStop.arriveEarlier(stay, lacking, in).map(finding::fixedBy).orElse(finding));
            }
        }
    }
}
