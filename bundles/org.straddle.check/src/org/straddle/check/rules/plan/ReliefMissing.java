package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.Relief;
import org.straddle.outlook.itinerary.Sitting;

/** Attention fades after hours at one roadside. */
public final class ReliefMissing extends ScopedRule<Team> {

    public ReliefMissing() {
        super(Scope.TEAM, CareRule.RELIEF_MISSING.id(), Severity.ADVICE);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (Sitting sitting : Sitting.of(in.itinerary().of(team))) {
            if (Relief.isMissing(sitting, in.hold())) {
                findings.accept(Finding.of(this, Statement.of("reliefMissing.stays", "team", team, "site", sitting.first().site(),
                        "length", sitting.window().duration(), "during", sitting.window(), "limit", in.hold().longestStop()),
                        sitting.stops().toArray(Identified[]::new)).at(sitting.window().start()));
            }
        }
    }
}
