package org.straddle.check.rules.plan;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TurnPass;
import org.straddle.outlook.itinerary.Work;

/** A team's signal comes down wherever the bird is up, also where its operators hold no licence. */
public final class UplinkForeign extends ScopedRule<Stay> {

    public UplinkForeign() {
        super(Scope.STAY, CheckRule.UPLINK_FOREIGN.id(), Severity.ADVICE);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        List<Jurisdiction> home = in.outlook().jurisdictions(stay.site());
        List<Jurisdiction> closed = in.event().getJurisdictions().stream()
                .filter(place -> !place.isUplinkAllowed() && !home.contains(place)).toList();
        for (Work work : closed.isEmpty() ? List.<Work>of() : stay.turns()) {
            List<Jurisdiction> under = closed.stream().filter(place -> TurnPass.isKnown(in.outlook(), work)
                    && in.outlook().isUpIn(place, work.bird(), work.window())).toList();
            if (!under.isEmpty()) {
                Identified[] objects = Stream.concat(Stream.of(work.turn()), under.stream()).toArray(Identified[]::new);
                findings.accept(Finding.of(this, Statement.of("uplinkForeign.duringBirdAlso", "turn", work, "under", under),
                        objects).at(work.window().start()));
            }
        }
    }
}
