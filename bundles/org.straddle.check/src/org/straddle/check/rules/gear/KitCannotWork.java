package org.straddle.check.rules.gear;

import java.util.Set;
import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/** A team is to work a bird in a mode that its kit does not cover. */
public final class KitCannotWork extends ScopedRule<Team> {

    public KitCannotWork() {
        super(Scope.TEAM, "kit-cannot-work", Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Set<WorkMode> modes = ModesToWork.of(team, in);
        in.packing(team).modes().stream().filter(cover -> modes.contains(cover.mode()) && !cover.covered())
                .forEach(cover -> findings.accept(Finding.of(this, Statement.of("kitCannotWork.doWorkIts",
                        "team", team, "cover", Fact.told(cover.sentence())), team)
                        .restingOn(cover.mode(), cover.missingRoles().stream().sorted().toList(),
                                cover.missingItems().stream().map(Identified::getId).toList())));
    }
}
