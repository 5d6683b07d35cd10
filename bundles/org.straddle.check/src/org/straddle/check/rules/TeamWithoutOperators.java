package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;

/** Somebody has to drive and to work the birds. */
final class TeamWithoutOperators extends NamedRule {

    TeamWithoutOperators() {
        super("team-without-operators", Severity.WARNING, "Every team has operators");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        for (Team team : outlook.event().getTeams()) {
            if (Crew.of(team).isEmpty()) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(team)) + " has no operators.", team));
            }
        }
    }
}
