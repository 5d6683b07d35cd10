package org.straddle.check.rules;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.kit.PackingList;
import org.straddle.kit.SpareLoop;
import org.straddle.model.Identified;
import org.straddle.outlook.Outlook;

/** Items that are spares of each other in a ring leave nothing that is the original. */
final class SparesInRing extends NamedRule {

    SparesInRing() {
        super("spare-loop", Severity.WARNING, "A spare does not stand in for itself");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Set<SpareLoop> loops = new LinkedHashSet<>();
        outlook.event().getTeams().forEach(team -> loops.addAll(PackingList.of(team).spareLoops()));
        loops.forEach(loop -> findings.accept(
                Finding.of(this, loop.sentence(), loop.items().toArray(Identified[]::new))));
    }
}
