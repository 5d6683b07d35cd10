package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.kit.Load;
import org.straddle.kit.PackingList;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;

/** The load that the vehicle may carry besides people is written down with it. */
final class KitTooHeavy extends NamedRule {

    KitTooHeavy() {
        super("kit-too-heavy", Severity.WARNING, "The kit is not too heavy for the vehicle");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        for (Team team : outlook.event().getTeams()) {
            Load load = PackingList.of(team).load();
            if (load.exceeded()) {
                findings.accept(Finding.of(this, "The kit of " + Words.name(team) + " weighs " + load.sentence(),
                        team));
            }
        }
    }
}
