package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/** Two stops of one team overlap. */
public final class StopsOverlap extends ScopedRule<Team> {

    public StopsOverlap() {
        super(Scope.TEAM, PlanRule.STOPS_OVERLAP.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Overlaps.pairs(in.itinerary().of(team), Stay::window, (a, b) -> {
            Window both = a.window().intersection(b.window()).orElseThrow();
            Finding finding = Finding.of(this, Statement.of("stopsOverlap.sameTime", "team", team, "site", a.site(),
                    "site2", b.site(), "during", both), a.stop(),
                    b.stop())
                    .at(both.start());
            findings.accept(ShiftStop.apart(a, b, in).map(finding::fixedBy).orElse(finding));
        });
    }
}
