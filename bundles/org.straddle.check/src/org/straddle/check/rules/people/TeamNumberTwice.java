package org.straddle.check.rules.people;

import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Team;

/** The number identifies a team on every sheet. */
public final class TeamNumberTwice extends ScopedRule<Event> {

    public TeamNumberTwice() {
        super(Scope.TEAMS, CheckRule.TEAM_NUMBER_TWICE.id(), Severity.WARNING);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        event.getTeams().stream().filter(team -> team.getNumber() > 0)
                .collect(Collectors.groupingBy(Team::getNumber, TreeMap::new, Collectors.toList()))
                .forEach((number, teams) -> {
                    if (teams.size() > 1) {
                        findings.accept(Finding.of(this,
                                Statement.of("teamNumberTwice.teamsHaveNumber", "teams", teams.size(),
                                        "number", number, "teams2", teams),
                                teams.toArray(Identified[]::new)));
                    }
                });
    }
}
