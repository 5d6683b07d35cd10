package org.straddle.check.fix;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.DriveTime;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TeamDays;
import org.straddle.sky.Window;

/** Moves the arrival or the departure of a stop that is not pinned. */
public record ShiftStop(Statement says, String stopId, EAttribute end, Instant to) implements Fix {

    /** The later arrives when the earlier leaves, or the earlier leaves when the later arrives. */
    public static Optional<Fix> apart(Stay earlier, Stay later, Inspection in) {
        Duration inCommon = Duration.between(later.window().start(), earlier.window().end());
        return arriveLater(later, inCommon, in).or(() -> leaveEarlier(earlier, inCommon, in));
    }

    /** Leave earlier by some time, if all turns and the take-down still fit. */
    public static Optional<Fix> leaveEarlier(Stay stay, Duration by, Inspection in) {
        Instant to = stay.window().end().minus(by);
        Instant least = stay.turns().stream().map(work -> work.window().end().plus(in.policies().takeDown()))
                .max(Instant::compareTo).orElse(stay.window().start().plusSeconds(1));
        return stay.stop().isPinned() || to.isBefore(least) ? Optional.empty() : Optional.of(new ShiftStop(
                Statement.of("fix.leaveEarlier", "site", stay.site(), "at", to).in(in.outlook().zone()), stay.stop().getId(),
                StraddlePackage.Literals.STOP__DEPARTURE, to));
    }

    /** Arrive later by some time, if all turns still come after the set-up. */
    public static Optional<Fix> arriveLater(Stay stay, Duration by, Inspection in) {
        Instant to = stay.window().start().plus(by);
        Instant most = stay.turns().stream().map(work -> work.window().start().minus(in.policies().setUp()))
                .min(Instant::compareTo).orElse(stay.window().end().minusSeconds(1));
        return stay.stop().isPinned() || to.isAfter(most) ? Optional.empty() : Optional.of(new ShiftStop(
                Statement.of("fix.arriveLater", "site", stay.site(), "at", to).in(in.outlook().zone()), stay.stop().getId(),
                StraddlePackage.Literals.STOP__ARRIVAL, to));
    }

    /** Arrive earlier by some time, if the drive there can begin earlier and still have its planned time. */
    public static Optional<Fix> arriveEarlier(Stay stay, Duration by, Inspection in) {
        Instant to = stay.window().start().minus(by);
        Optional<Drive> drive = in.duties(stay.team()).stream().flatMap(duty -> duty.to(stay).stream()).findFirst();
        boolean fits = drive.map(there -> there.time().minus(DriveTime.of(there.road(), in.hold()).planned(in.hold()))
                .compareTo(by) >= 0).orElseGet(() -> isFree(stay, to, in));
        return stay.stop().isPinned() || !fits ? Optional.empty() : Optional.of(new ShiftStop(
                Statement.of("fix.arriveEarlier", "site", stay.site(), "at", to).in(in.outlook().zone()), stay.stop().getId(),
                StraddlePackage.Literals.STOP__ARRIVAL, to));
    }

    private static boolean isFree(Stay stay, Instant arrival, Inspection in) {
        return in.itinerary().of(stay.team()).stream().noneMatch(other -> other.window().end().isAfter(arrival)
                && other.window().start().isBefore(stay.window().start()))
                && TeamDays.hold(stay.team(), new Window(arrival, stay.window().end()));
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        Stop stop = new LivePlan(live).stop(stopId).orElse(null);
        return stop == null ? UnexecutableCommand.INSTANCE : SetCommand.create(domain, stop, end, to);
    }
}
