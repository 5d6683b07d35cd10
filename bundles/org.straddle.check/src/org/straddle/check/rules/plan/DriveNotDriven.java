package org.straddle.check.rules.plan;

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
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Wheel;
import org.straddle.outlook.keeping.PlanKeeping;

/** A computed drive is a guess; those on which most turns hang are worth driving before the event. */
public final class DriveNotDriven extends ScopedRule<Team> {

    /** More would be a list that nobody works off. */
    private static final int MOST = 3;

    public DriveNotDriven() {
        super(Scope.TEAM, CheckRule.DRIVE_NOT_DRIVEN.id(), Severity.ADVICE);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        List<PlanKeeping.UnknownDrive> unknown = in.keeping(team).drives();
        unknown.stream().limit(MOST).forEach(each -> {
            Drive drive = each.drive();
            Identified[] objects = Stream.concat(drive.before().stream(), drive.after().stream()).map(Stay::stop)
                    .toArray(Identified[]::new);
            findings.accept(Finding.of(this, Statement.of("driveNotDriven.nobody", "from", drive.from(), "to", drive.to(),
                    "roadKm", Math.round(drive.road().roadKm()), "driving", Wheel.wholeMinutes(drive.road().driving()),
                    "team", team, "gain", Math.round(100 * each.gain()) / 100.0), objects).at(Duty.leaves(drive, in.hold())));
        });
    }
}
