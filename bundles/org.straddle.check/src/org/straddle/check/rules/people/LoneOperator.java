package org.straddle.check.rules.people;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.outlook.itinerary.PlanRule;

/** The policy of the event decides whether an operator may be alone. */
public final class LoneOperator extends ScopedRule<Team> {

    public LoneOperator() {
        super(Scope.TEAM, PlanRule.LONE_OPERATOR.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        if (Crew.isAlone(team, in.policies()) && !in.itinerary().of(team).isEmpty()) {
            Operator operator = Crew.of(team).get(0);
            findings.accept(Finding.of(this, Statement.of("loneOperator.wouldAlonePolicy", "crew", operator,
                    "team", team), team, operator)
                    .restingOn(in.itinerary().of(team).stream().map(stay -> stay.site().getId()).distinct().sorted()
                            .toList()));
        }
    }
}
