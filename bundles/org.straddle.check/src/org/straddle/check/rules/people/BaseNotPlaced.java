package org.straddle.check.rules.people;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;

/** Latitude and longitude 0 are what a new base starts with; drives to it would cross half the world. */
public final class BaseNotPlaced extends ScopedRule<Team> {

    public BaseNotPlaced() {
        super(Scope.TEAM, CheckRule.BASE_NOT_PLACED.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        team.getDays().stream().flatMap(day -> Stream.of(day.getStart(), day.getEnd()).filter(Objects::nonNull)).distinct()
                .filter(base -> base.getLatitudeDeg() == 0 && base.getLongitudeDeg() == 0)
                .forEach(base -> findings.accept(Finding.of(this, Statement.of("baseNotPlaced.zero", "base", base, "team", team),
                        base, team)));
    }
}
