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
import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/** An item without a spare stops a mode of work that the team is to do. */
public final class KitWithoutSpare extends ScopedRule<Team> {

    public KitWithoutSpare() {
        super(Scope.TEAM, "kit-without-spare", Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Set<WorkMode> modes = ModesToWork.of(team, in);
        in.packing(team).singlePoints().stream().filter(point -> point.stops().stream().anyMatch(modes::contains))
                .forEach(point -> findings.accept(Finding.of(this, Statement.of("kitWithoutSpare.kit", "team", team,
                        "point", Fact.told(point.sentence())), team, point.item())
                        .restingOn(point.stops().stream().sorted().toList(), point.item().getRole())));
    }
}
