package org.straddle.check.rules.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Wheel;
import org.straddle.sky.Window;

/** The road needs more time than lies between two stops, or between a stop and the base. */
public final class DriveTooLong extends ScopedRule<Team> {

    public DriveTooLong() {
        super(Scope.TEAM, PlanRule.DRIVE_TOO_LONG.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (Drive drive : Drives.of(team, in.outlook(), in.itinerary())) {
            if (Wheel.isTooLong(drive)) {
                findings.accept(fixed(finding(drive), drive, Wheel.lacking(drive), in));
            }
        }
    }

    private Finding finding(Drive drive) {
        Identified[] objects = Stream.concat(drive.before().stream(), drive.after().stream()).map(Stay::stop)
                .toArray(Identified[]::new);
        Instant leaves = drive.before().map(stay -> stay.window().end())
                .orElseGet(() -> drive.after().orElseThrow().window().start().minus(drive.time()));
        return Finding.of(this, Statement.of("driveTooLong.needsFromKm", "team", drive.team(),
                "wholeMinutes", Wheel.wholeMinutes(drive.road().total()), "from", drive.from(), "drive", drive.to(),
                "roadKm", Math.round(drive.road().roadKm()), "origin", drive.road().isEntered()
                ? Statement.of("driveTooLong.time", "origin", drive.road().origin()) : "",
                "breaks", drive.road().breaks().isZero() ? "" : Statement.of("driveTooLong.breaks",
                "breaks", drive.road().breaks()), "time", drive.time(),
                "during", drive.time().isZero() ? leaves : Window.of(leaves, drive.time())), objects)
                .restingOn(drive.road())
                .at(leaves);
    }

    private static Finding fixed(Finding finding, Drive drive, Duration lacking, Inspection in) {
        Optional<Fix> earlier = drive.before()
                .flatMap(stay -> ShiftStop.leaveEarlier(stay, lacking, in));
        Optional<Fix> later = drive.after().flatMap(stay -> ShiftStop.arriveLater(stay, lacking, in));
        return earlier.or(() -> later).map(finding::fixedBy).orElse(finding);
    }
}
