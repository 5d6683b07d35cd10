package org.straddle.check.rules.people;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Crew;

/** Somebody has to drive and to work the birds. */
public final class TeamWithoutOperators extends ScopedRule<Team> {

    public TeamWithoutOperators() {
        super(Scope.TEAM, CheckRule.TEAM_WITHOUT_OPERATORS.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        if (Crew.of(team).isEmpty()) {
            findings.accept(Finding.of(this, Statement.of("teamWithoutOperators.hasOperators", "team", team), team));
        }
    }
}
