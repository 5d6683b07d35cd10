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
import org.straddle.outlook.itinerary.Itinerary;

/** A day of a team without a usable time gives its stops nowhere to be. */
public final class DayTimesWrong extends ScopedRule<Team> {

    public DayTimesWrong() {
        super(Scope.TEAM, CheckRule.DAY_TIMES_WRONG.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (TeamDay day : team.getDays()) {
            if (Itinerary.window(day.getFrom(), day.getUntil()).isEmpty()) {
                findings.accept(Finding.of(this, Statement.of("dayTimesWrong.day", "team", team,
                        "until", day.getFrom() == null
                        ? Statement.of("dayTimesWrong.doesNotSay") : day.getUntil() == null
                        ? Statement.of("dayTimesWrong.noUntil") : Statement.of("dayTimesWrong.endsNotAfter",
                        "until", day.getUntil(), "from", day.getFrom())), team).restingOn(day.getFrom(), day.getUntil()));
            }
        }
    }
}
