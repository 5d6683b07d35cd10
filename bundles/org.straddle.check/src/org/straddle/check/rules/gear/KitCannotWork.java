package org.straddle.check.rules.gear;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.ModeCover;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.work.Work;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/** A team is to work a bird in a mode that its kit does not cover. */
public final class KitCannotWork extends ScopedRule<Team> {

    public KitCannotWork() {
        super(Scope.TEAM, CheckRule.KIT_CANNOT_WORK.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Set<WorkMode> modes = ModesToWork.of(team, in);
        List<ModeCover> covers = in.packing(team).modes();
        covers.stream().filter(cover -> modes.contains(cover.mode()) && !cover.covered())
                .forEach(cover -> findings.accept(Finding.of(this, Statement.of("kitCannotWork.doWorkIts",
                        "team", team, "cover", Fact.told(cover.sentence())), team)
                        .restingOn(cover.mode(), cover.missingRoles().stream().sorted().toList(),
                                cover.missingItems().stream().map(Identified::getId).toList())));
        Set<WorkMode> covered = covers.stream().filter(ModeCover::covered).map(ModeCover::mode).collect(Collectors.toSet());
        ResilienceText text = new ResilienceText(in.resilience(team));
        in.resilience(team).planned().stream()
                .filter(answer -> !answer.possible() && covered.contains(mode(answer.task().work())))
                .forEach(answer -> findings.accept(Finding.of(this, Statement.of("kitCannotWork.doWorkIts",
                        "team", team, "cover", Fact.told(text.cannot(answer))), team).restingOn(answer.task(), answer.missing())));
    }

    /** Roles alone do not see bands: what they find is told once, by role. */
    private static WorkMode mode(Work work) {
        return switch (work) {
            case FM, HANDHELD_VOICE, PROOF -> WorkMode.FM;
            case LINEAR_FULL_DUPLEX, LINEAR_HALF_DUPLEX -> WorkMode.LINEAR;
            case DATA -> WorkMode.DATA;
        };
    }
}
