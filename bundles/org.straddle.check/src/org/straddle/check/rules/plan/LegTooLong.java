package org.straddle.check.rules.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Mend;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.mend.ShiftStop;
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
public final class LegTooLong extends ScopedRule<Team> {

    public LegTooLong() {
        super(Scope.TEAM, PlanRule.LEG_TOO_LONG.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (Drive drive : Drives.of(team, in.outlook(), in.itinerary())) {
            if (Wheel.isTooLong(drive)) {
                findings.accept(mended(finding(drive), drive, Wheel.lacking(drive), in));
            }
        }
    }

    private Finding finding(Drive drive) {
        Identified[] objects = Stream.concat(drive.before().stream(), drive.after().stream()).map(Stay::stop)
                .toArray(Identified[]::new);
        Instant leaves = drive.before().map(stay -> stay.window().end())
                .orElseGet(() -> drive.after().orElseThrow().window().start().minus(drive.time()));
        return Finding.of(this, Statement.of("legTooLong.needsFromKm", "team", drive.team(),
                "wholeMinutes", Wheel.wholeMinutes(drive.leg().total()), "from", drive.from(), "drive", drive.to(),
                "roadKm", Math.round(drive.leg().roadKm()), "origin", drive.leg().isEntered()
                ? Statement.of("legTooLong.time", "origin", drive.leg().origin()) : "",
                "breaks", drive.leg().breaks().isZero() ? "" : Statement.of("legTooLong.breaks",
                "breaks", drive.leg().breaks()), "time", drive.time(),
                "during", drive.time().isZero() ? leaves : Window.of(leaves, drive.time())), objects)
                .restingOn(drive.leg())
                .at(leaves);
    }

    private static Finding mended(Finding finding, Drive drive, Duration lacking, Inspection in) {
        Optional<Mend> earlier = drive.before()
                .flatMap(stay -> ShiftStop.leaveEarlier(stay, lacking, in));
        Optional<Mend> later = drive.after().flatMap(stay -> ShiftStop.arriveLater(stay, lacking, in));
        return earlier.or(() -> later).map(finding::mendedBy).orElse(finding);
    }
}
