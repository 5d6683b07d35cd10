package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Stay;

/**
 * Time at the wheel goes on adding up over short stops. A drive reckons only with its own breaks; this rule with what was
 * driven before it since the last pause that was long enough, by the law of all places since then. Whatever is not driving counts as a pause: a stop, or time
 * to spare on the way.
 */
public final class BreakMissing extends ScopedRule<Team> {

    public BreakMissing() {
        super(Scope.TEAM, CheckRule.BREAK_MISSING.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Duration atTheWheel = Duration.ZERO;
        Drive before = null;
        Set<Identified> places = new LinkedHashSet<>();
        for (Drive drive : Drives.of(team, in.outlook(), in.itinerary())) {
            if (before == null || drive.before().isEmpty() || pause(before, drive).compareTo(in.policies().breakLength()) >= 0) {
                atTheWheel = Duration.ZERO;
                places.clear();
            }
            places.addAll(List.of(drive.from(), drive.to()));
            DrivingLaw law = in.outlook().drivingLaw(places);
            Duration through = atTheWheel.plus(drive.road().driving());
            long due = law.breaks(through);
            long own = in.outlook().drivingLaw(List.of(drive.from(), drive.to())).breaks(drive.road().driving());
            if (due > own) {
                findings.accept(finding(team, before, drive, through, law, in));
            }
            atTheWheel = through.minus(law.breakAfter().multipliedBy(due));
            before = drive;
        }
    }

    private Finding finding(Team team, Drive before, Drive drive, Duration through, DrivingLaw law, Inspection in) {
        Stay between = drive.before().orElseThrow();
        Identified[] objects = Stream.concat(Stream.of(team, between.stop()), drive.after().stream().map(Stay::stop))
                .toArray(Identified[]::new);
        return Finding.of(this, Statement.of("breakMissing.comesWheelFrom", "team", team, "through", through,
                "from", before.from(), "from2", drive.from(), "drive", drive.to(), "pause", pause(before, drive),
                "breakLength", in.policies().breakLength(),
                "breakAfter", law.breakAfter(), "whose", law.breakOf().isPresent() ? "country" : "event",
                "country", law.breakOf().map(Object.class::cast).orElse("")), objects).restingOn(through, pause(before, drive)).at(between.window().start());
    }

    /** The stop between two drives, and what both leave over. */
    private static Duration pause(Drive before, Drive drive) {
        return drive.before().orElseThrow().window().duration()
                .plus(spare(before)).plus(spare(drive));
    }

    private static Duration spare(Drive drive) {
        Duration spare = drive.time().minus(drive.road().total());
        return spare.isNegative() ? Duration.ZERO : spare;
    }
}
