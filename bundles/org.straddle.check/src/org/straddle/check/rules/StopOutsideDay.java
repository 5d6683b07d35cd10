package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** A team is out only between the start and the end of one of its days. */
final class StopOutsideDay extends NamedRule {

    StopOutsideDay() {
        super("stop-outside-day", Severity.BLOCKER, "Stops lie within the days of their team");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        for (Stay stay : Itinerary.of(outlook.event()).stays()) {
            boolean within = stay.team().getDays().stream()
                    .flatMap(day -> Itinerary.window(day.getFrom(), day.getUntil()).stream())
                    .anyMatch(day -> day.contains(stay.window()));
            if (!within) {
                findings.accept(Finding.of(this, Words.sentence(words.stop(stay)) + ", " + day(stay, words) + ".",
                        stay.stop())
                        .at(stay.window().start()));
            }
        }
    }

    private static String day(Stay stay, Words words) {
        if (stay.team().getDays().isEmpty()) {
            return "lies on no day of the team, because the team has no days";
        }
        return Drives.dayOf(stay).map(day -> "reaches out of the team's day, "
                + words.during(new Window(day.getFrom(), day.getUntil()))).orElse("lies on no day of the team");
    }
}
