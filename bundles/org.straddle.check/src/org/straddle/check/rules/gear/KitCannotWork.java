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
import org.straddle.kit.team.ResilienceText;
import org.straddle.model.Team;

/** A team is to work a bird in a mode or on bands that its kit does not cover. */
public final class KitCannotWork extends ScopedRule<Team> {

    public KitCannotWork() {
        super(Scope.TEAM, CheckRule.KIT_CANNOT_WORK.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        ResilienceText text = new ResilienceText(in.resilience(team));
        in.resilience(team).planned().stream().filter(answer -> !answer.possible())
                .forEach(answer -> findings.accept(Finding.of(this, Statement.of("kitCannotWork.doWorkIts",
                        "team", team, "cover", Fact.told(text.cannot(answer))), team).restingOn(answer.task(), answer.missing())));
    }
}
