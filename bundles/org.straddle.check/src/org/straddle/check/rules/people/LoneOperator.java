package org.straddle.check.rules.people;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Operator;
import org.straddle.model.Team;

/** The policy of the event decides whether an operator may be alone. */
public final class LoneOperator extends ScopedRule<Team> {

    public LoneOperator() {
        super(Scope.TEAM, "lone-operator", Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        List<Operator> crew = Crew.of(team);
        if (!in.policies().loneOperatorAllowed() && crew.size() == 1 && !in.itinerary().of(team).isEmpty()) {
            findings.accept(Finding.of(this, Statement.of("loneOperator.wouldAlonePolicy", "crew", crew.get(0),
                    "team", team), team, crew.get(0))
                    .restingOn(in.itinerary().of(team).stream().map(stay -> stay.site().getId()).distinct().sorted()
                            .toList()));
        }
    }
}
