package org.straddle.check.rules.gear;

import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.Load;
import org.straddle.model.Team;

/** The load that the vehicle may carry besides people is written down with it. */
public final class KitTooHeavy extends ScopedRule<Team> {

    public KitTooHeavy() {
        super(Scope.TEAM, CheckRule.KIT_TOO_HEAVY.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Load load = in.packing(team).load();
        if (load.exceeded()) {
            findings.accept(Finding.of(this, Statement.of("kitTooHeavy.kitWeighs", "team", team,
                    "load", Fact.told(load.sentence())), team).restingOn(load));
        }
    }
}
