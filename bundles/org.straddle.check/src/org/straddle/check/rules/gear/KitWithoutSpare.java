package org.straddle.check.rules.gear;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.mend.LendStock;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/** An item without a spare stops a mode of work that the team is to do. */
public final class KitWithoutSpare extends ScopedRule<Team> {

    public KitWithoutSpare() {
        super(Scope.TEAM, CheckRule.KIT_WITHOUT_SPARE.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Set<WorkMode> modes = ModesToWork.of(team, in);
        Set<KitItem> told = new HashSet<>();
        in.packing(team).singlePoints().stream().filter(point -> point.stops().stream().anyMatch(modes::contains))
                .forEach(point -> {
                    told.add(point.item());
                    Finding finding = Finding.of(this, Statement.of("kitWithoutSpare.kit", "team", team,
                            "point", Fact.told(point.sentence())), team, point.item())
                            .restingOn(point.stops().stream().sorted().toList(), point.item().getRole());
                    findings.accept(remedied(finding, point.item(), team, in));
                });
        ResilienceText text = new ResilienceText(in.resilience(team));
        Resilience resilience = in.resilience(team);
        for (Answer answer : resilience.planned()) {
            for (Gear gear : answer.single()) {
                resilience.inventory().item(gear).filter(told::add).ifPresent(item -> findings.accept(remedied(
                        Finding.of(this, Statement.of("kitWithoutSpare.kit", "team", team,
                                "point", Fact.told(text.single(answer, gear))), team, item).restingOn(answer.task()),
                        item, team, in)));
            }
        }
    }

    /** Offers the cheapest single piece of club stock that helps in every way of working that the item ends. */
    private static Finding remedied(Finding finding, KitItem item, Team team, Inspection in) {
        Resilience resilience = in.resilience(team);
        List<Optional<KitItem>> remedies = resilience.planned().stream().flatMap(answer -> answer.single().stream()
                .filter(gear -> resilience.inventory().item(gear).orElse(null) == item)
                .map(gear -> resilience.remedy(answer, gear).flatMap(resilience.inventory()::item))).distinct().toList();
        return remedies.size() != 1 ? finding : remedies.get(0).filter(LendStock::isStock)
                .map(stock -> finding.mendedBy(LendStock.of(stock, team))).orElse(finding);
    }
}
