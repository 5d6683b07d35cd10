package org.straddle.check.rules.gear;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.kit.Load;
import org.straddle.model.Team;

/** The load that the vehicle may carry besides people is written down with it. */
public final class KitTooHeavy extends ScopedRule<Team> {

    public KitTooHeavy() {
        super(Scope.TEAM, "kit-too-heavy", Severity.WARNING, "The kit is not too heavy for the vehicle");
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Load load = in.packing(team).load();
        if (load.exceeded()) {
            findings.accept(Finding.of(this, "The kit of " + Words.name(team) + " weighs " + load.sentence(), team));
        }
    }
}
