package org.straddle.check.rules.gear;

import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.LendStock;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.SinglePoint;
import org.straddle.kit.work.Answer;
import org.straddle.model.KitItem;
import org.straddle.model.Team;

/** An item without a spare stops work that the team is to do; each item is said once. */
public final class KitWithoutSpare extends ScopedRule<Team> {

    public KitWithoutSpare() {
        super(Scope.TEAM, CheckRule.KIT_WITHOUT_SPARE.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Resilience resilience = in.resilience(team);
        ResilienceText text = new ResilienceText(resilience);
        resilience.singlePoints().forEach(point -> resilience.inventory().item(point.gear())
                .ifPresent(item -> findings.accept(finding(team, item, point, resilience, text))));
    }

    /** Offers the cheapest single piece of club stock that helps with all that the item ends. */
    private Finding finding(Team team, KitItem item, SinglePoint point, Resilience resilience, ResilienceText text) {
        Finding finding = Finding.of(this, Statement.of("kitWithoutSpare.kit", "team", team, "point", Fact.told(text.single(point))),
                team, item).restingOn(point.stops().stream().map(Answer::task).toList());
        return resilience.remedy(point).flatMap(resilience.inventory()::item).filter(LendStock::isStock)
                .map(stock -> finding.fixedBy(LendStock.of(stock, team, item))).orElse(finding);
    }
}
