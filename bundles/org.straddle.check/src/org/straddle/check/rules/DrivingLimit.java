package org.straddle.check.rules;

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
import org.straddle.model.Identified;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;

/** Time at the wheel adds up over the legs of one team in one day. */
final class DrivingLimit extends NamedRule {

    DrivingLimit() {
        super("driving-limit", Severity.WARNING, "A team does not drive too long in a day");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Map<TeamDay, List<Drive>> byDay = new LinkedHashMap<>();
        Drives.of(outlook, Itinerary.of(outlook.event())).forEach(drive -> drive.day()
                .ifPresent(day -> byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(drive)));
        Duration limit = outlook.policies().drivingLimit();
        byDay.forEach((day, drives) -> {
            Duration driving = drives.stream().map(drive -> drive.leg().driving())
                    .reduce(Duration.ZERO, Duration::plus);
            if (driving.compareTo(limit) > 0) {
                Set<Identified> objects = new LinkedHashSet<>(List.of(drives.get(0).team()));
                drives.forEach(drive -> Stream.concat(drive.before().stream(), drive.after().stream())
                        .forEach(stay -> objects.add(stay.stop())));
                findings.accept(Finding.of(this, Words.sentence(Words.name(drives.get(0).team())) + " drives "
                        + Words.length(driving) + " on the day that begins " + words.at(day.getFrom())
                        + "; the limit of this event is " + Words.length(limit) + ".",
                        objects.toArray(Identified[]::new))
                        .at(day.getFrom()));
            }
        });
    }
}
