package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.Duty;

/** A team sleeps between two days. */
public final class RestTooShort extends ScopedRule<Team> {

    public RestTooShort() {
        super(Scope.TEAM, CareRule.REST_TOO_SHORT.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        List<Duty> duties = in.duties(team);
        for (int i = 1; i < duties.size(); i++) {
            Duty before = duties.get(i - 1);
            Duty after = duties.get(i);
            if (!Duty.lackingRest(before, after, in.hold()).isZero()) {
                Duration rest = Duration.between(before.window().end(), after.window().start());
                findings.accept(Finding.of(this, Statement.of("restTooShort.rest", "team", team,
                        "back", before.window().end(), "leaves", after.window().start(),
                        "rest", rest.isNegative() ? Duration.ZERO : rest, "least", in.hold().leastRest()), team,
                        before.stays().get(before.stays().size() - 1).stop(), after.stays().get(0).stop())
                        .at(before.window().end()));
            }
        }
    }
}
