package org.straddle.check.rules;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Operator;
import org.straddle.outlook.Outlook;

/** The policy of the event decides whether an operator may be alone. */
final class LoneOperator extends NamedRule {

    LoneOperator() {
        super("lone-operator", Severity.WARNING, "Nobody works alone at a roadside");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        if (outlook.policies().loneOperatorAllowed()) {
            return;
        }
        Itinerary.of(outlook.event()).byTeam().forEach((team, stays) -> {
            List<Operator> crew = Crew.of(team);
            if (crew.size() == 1) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(crew.get(0))) + " would be alone in "
                        + Words.name(team) + "; the policy of this event does not allow it.", team, crew.get(0)));
            }
        });
    }
}
