package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Team;

/** Somebody has to drive and to work the birds. */
final class TeamWithoutOperators extends ScopedRule<Team> {

    TeamWithoutOperators() {
        super(Scope.TEAM, "team-without-operators", Severity.WARNING, "Every team has operators");
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        if (Crew.of(team).isEmpty()) {
            findings.accept(Finding.of(this, Words.sentence(Words.name(team)) + " has no operators.", team));
        }
    }
}
