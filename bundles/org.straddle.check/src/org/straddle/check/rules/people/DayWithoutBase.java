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
import org.straddle.model.TeamDay;

/** Without a base nobody counts the drive in the morning or in the evening. */
public final class DayWithoutBase extends ScopedRule<Team> {

    public DayWithoutBase() {
        super(Scope.TEAM, CheckRule.DAY_WITHOUT_BASE.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (TeamDay day : team.getDays()) {
            if (day.getFrom() != null && (day.getStart() == null || day.getEnd() == null)) {
                String which = day.getStart() != null ? "end" : day.getEnd() != null ? "start" : "both";
                findings.accept(Finding.of(this, Statement.of("dayWithoutBase.noBase", "team", team, "from", day.getFrom(),
                        "which", which), team).restingOn(day.getFrom()));
            }
        }
    }
}
