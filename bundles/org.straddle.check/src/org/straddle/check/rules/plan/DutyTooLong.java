package org.straddle.check.rules.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.Duty;

/** Tired people drive badly: a day out has an end. */
public final class DutyTooLong extends ScopedRule<Team> {

    public DutyTooLong() {
        super(Scope.TEAM, CareRule.DUTY_TOO_LONG.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (Duty duty : in.duties(team)) {
            if (duty.isTooLong(in.hold())) {
                List<Identified> objects = new ArrayList<>(List.of(team));
                duty.stays().forEach(stay -> objects.add(stay.stop()));
                findings.accept(Finding.of(this, Statement.of("dutyTooLong.out", "team", team,
                        "length", duty.window().duration(), "during", duty.window(), "limit", in.hold().longestDuty()),
                        objects.toArray(Identified[]::new)).at(duty.window().start()));
            }
        }
    }
}
