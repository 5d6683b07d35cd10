package org.straddle.check.rules.people;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.itinerary.Itinerary;

/** A day of a team without a usable time gives its stops nowhere to be. */
public final class DayTimesWrong extends ScopedRule<Team> {

    public DayTimesWrong() {
        super(Scope.TEAM, "day-times-wrong", Severity.BLOCKER, "Every day of a team ends after it begins");
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (TeamDay day : team.getDays()) {
            if (Itinerary.window(day.getFrom(), day.getUntil()).isEmpty()) {
                findings.accept(Finding.of(this, "A day of " + Words.name(team)
                        + (day.getFrom() == null ? " does not say from when"
                                : day.getUntil() == null ? " does not say until when"
                                        : " ends " + in.words().at(day.getUntil()) + ", not after its start "
                                                + in.words().at(day.getFrom()))
                        + ".", team).restingOn(day.getFrom(), day.getUntil()));
            }
        }
    }
}
