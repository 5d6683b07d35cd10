package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.Pins;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Access;
import org.straddle.model.Bird;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.Work;

/** A single-channel bird has one uplink for all in its footprint: two teams that both see it talk over each other. */
public final class OneChannel extends ScopedRule<Bird> {

    public OneChannel() {
        super(Scope.BIRD, PlanRule.ONE_CHANNEL.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        if (bird.getAccess() == Access.SINGLE_CHANNEL) {
            Overlaps.pairs(in.itinerary().on(bird), Work::window, (a, b) -> SharedTurns.onOneChannel(in.outlook(), a, b).ifPresent(
                    shared -> {
                        Finding finding = Finding.of(this, Statement.of("oneChannel.wouldUseOne", "team", a.team(),
                                "site", a.site(), "team2", b.team(), "site2", b.site(), "bird", bird,
                                "during", shared), a.turn(), b.turn()).at(shared.start());
                        findings.accept(Pins.toChange(a, b).map(RemoveTurns::of).map(finding::fixedBy).orElse(finding));
                    }));
        }
    }
}
