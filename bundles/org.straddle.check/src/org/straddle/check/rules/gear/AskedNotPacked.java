package org.straddle.check.rules.gear;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Fact;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.AddAsked;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.asked.PlanAsks;
import org.straddle.model.Identified;
import org.straddle.model.Team;

/** Sites, crew and heat ask for vests, tape, water and the like; each that is not packed is a finding. */
public final class AskedNotPacked extends ScopedRule<Team> {

    public AskedNotPacked() {
        super(Scope.TEAM, CheckRule.ASKED_NOT_PACKED.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        PlanAsks.lacking(team, in.outlook(), in.itinerary()).forEach(lacking -> findings.accept(
                Finding.of(this, Statement.of("askedNotPacked.team", "team", team, "thing", Fact.told(lacking.sentence()), "because",
                        Fact.told(lacking.asked().because().get(0)), "more", lacking.asked().because().size() - 1), team)
                        .restingOn(lacking.asked().use(), lacking.asked().amount(), lacking.asked().vestClass(), lacking.enough(),
                                lacking.asked().facts(),
                                lacking.doubtful(), lacking.items().stream().map(Identified::getId).toList())
                        .fixedBy(AddAsked.of(lacking, team))));
    }
}
