package org.straddle.check.rules.people;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Event;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.sky.Window;

/** Two teams that are out at the same time count on the same person. */
public final class OperatorInTwoTeams extends ScopedRule<Event> {

    public OperatorInTwoTeams() {
        super(Scope.TEAMS, CheckRule.OPERATOR_IN_TWO_TEAMS.id(), Severity.WARNING);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        List<Team> teams = event.getTeams();
        for (int i = 0; i < teams.size(); i++) {
            for (int j = i + 1; j < teams.size(); j++) {
                Team a = teams.get(i);
                Team b = teams.get(j);
                List<Operator> both = Crew.of(a).stream().filter(Crew.of(b)::contains).toList();
                if (!both.isEmpty()) {
                    List<Window> times = sharedTimes(a, b);
                    times.stream().findFirst().ifPresent(time -> findings.accept(Finding.of(this,
                            Statement.of("operatorInTwoTeams.wouldSameTime", "both", both, "a", a, "b", b,
                                    "during", time), a, b).restingOn(times).at(time.start())));
                }
            }
        }
    }

    private static List<Window> sharedTimes(Team a, Team b) {
        return days(a).flatMap(one -> days(b).flatMap(other -> one.intersection(other).stream()))
                .sorted(Window.IN_TIME_ORDER).toList();
    }

    private static Stream<Window> days(Team team) {
        return team.getDays().stream().flatMap(day -> Itinerary.window(day.getFrom(), day.getUntil()).stream());
    }
}
