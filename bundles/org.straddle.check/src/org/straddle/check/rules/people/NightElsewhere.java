package org.straddle.check.rules.people;

import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Base;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.itinerary.Itinerary;

/** A team begins a day at another base than the one where its last day ended. */
public final class NightElsewhere extends ScopedRule<Team> {

    public NightElsewhere() {
        super(Scope.TEAM, CheckRule.NIGHT_ELSEWHERE.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        List<TeamDay> days = team.getDays().stream()
                .filter(day -> Itinerary.window(day.getFrom(), day.getUntil()).isPresent())
                .sorted(Comparator.comparing(TeamDay::getFrom)).toList();
        for (int i = 1; i < days.size(); i++) {
            Base slept = days.get(i - 1).getEnd();
            Base begins = days.get(i).getStart();
            if (slept != null && begins != null && slept != begins) {
                findings.accept(Finding.of(this, Statement.of("nightElsewhere.otherBase", "team", team,
                        "end", slept, "start", begins, "from", days.get(i).getFrom()), team)
                        .restingOn(days.get(i - 1).getUntil(), days.get(i).getFrom()));
            }
        }
    }
}
