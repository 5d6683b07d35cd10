package org.straddle.check.rules.gear;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.team.SpareLoop;
import org.straddle.model.Event;
import org.straddle.model.Identified;

/** Items that are spares of each other in a ring leave nothing that is the original. */
public final class SparesInRing extends ScopedRule<Event> {

    public SparesInRing() {
        super(Scope.TEAMS, CheckRule.SPARE_LOOP.id(), Severity.WARNING);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        Set<SpareLoop> loops = new LinkedHashSet<>();
        event.getTeams().forEach(team -> loops.addAll(in.packing(team).spareLoops()));
        loops.forEach(loop -> findings.accept(
                Finding.of(this, Statement.of("sparesInRing.is", "loop", Fact.told(loop.sentence())), loop.items().toArray(Identified[]::new))
                        .restingOn(loop.items().stream().map(Identified::getId).toList())));
    }
}
