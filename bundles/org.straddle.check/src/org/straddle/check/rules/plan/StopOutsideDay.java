package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TeamDays;
import org.straddle.sky.Window;

/** A team is out only between the start and the end of one of its days. */
public final class StopOutsideDay extends ScopedRule<Stay> {

    public StopOutsideDay() {
        super(Scope.STAY, PlanRule.STOP_OUTSIDE_DAY.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        if (!TeamDays.hold(stay.team(), stay.window())) {
            Finding finding = Finding.of(this, day(stay),
                    stay.stop()).at(stay.window().start());
            findings.accept(within(stay, in).map(finding::fixedBy).orElse(finding));
        }
    }

    /** Cut to the team's day at the one end where it reaches out, if its turns still fit. */
    private static Optional<Fix> within(Stay stay, Inspection in) {
        Optional<Window> day = Drives.dayOf(stay).map(d -> new Window(d.getFrom(), d.getUntil()));
        if (day.isEmpty()) {
            return Optional.empty();
        }
        Duration early = Duration.between(stay.window().start(), day.get().start());
        Duration late = Duration.between(day.get().end(), stay.window().end());
        return early.isNegative() || early.isZero() ? ShiftStop.leaveEarlier(stay, late, in)
                : late.isNegative() || late.isZero() ? ShiftStop.arriveLater(stay, early, in) : Optional.empty();
    }

    private static Statement day(Stay stay) {
        if (stay.team().getDays().isEmpty()) {
            return Statement.of("stopOutsideDay.noDays", "stop", stay);
        }
        return Drives.dayOf(stay).map(day -> Statement.of("stopOutsideDay.past", "stop", stay,
                "during", new Window(day.getFrom(), day.getUntil()))).orElse(Statement.of("stopOutsideDay.noDay", "stop", stay));
    }
}
