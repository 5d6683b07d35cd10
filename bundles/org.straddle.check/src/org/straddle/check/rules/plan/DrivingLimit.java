package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Wheel;

/** Time at the wheel adds up over the drives of one team in one day. */
public final class DrivingLimit extends ScopedRule<Team> {

    public DrivingLimit() {
        super(Scope.TEAM, PlanRule.DRIVING_LIMIT.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Map<TeamDay, List<Drive>> byDay = new LinkedHashMap<>();
        Drives.of(team, in.outlook(), in.itinerary()).forEach(drive -> drive.day()
                .ifPresent(day -> byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(drive)));
        byDay.forEach((day, drives) -> {
            Duration driving = Wheel.driving(drives, day);
            DrivingLaw law = Wheel.law(in.outlook(), drives, day);
            if (Wheel.isOverLimit(driving, law)) {
                Set<Identified> objects = new LinkedHashSet<>(List.of(team));
                drives.forEach(drive -> Stream.concat(drive.before().stream(), drive.after().stream())
                        .forEach(stay -> objects.add(stay.stop())));
                findings.accept(Finding.of(this, Statement.of("drivingLimit.drivesDayBegins", "team", team,
                        "driving", driving, "from", day.getFrom(), "limit", law.limit(), "whose", law.limitOf().isPresent() ? "country" : "event",
                        "country", law.limitOf().map(Object.class::cast).orElse("")),
                        objects.toArray(Identified[]::new)).restingOn(driving, law.limit())
                        .at(day.getFrom()));
            }
        });
    }
}
