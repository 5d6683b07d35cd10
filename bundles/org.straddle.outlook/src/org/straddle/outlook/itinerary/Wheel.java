package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.util.Collection;
import java.util.stream.Stream;

import org.straddle.model.Identified;
import org.straddle.model.TeamDay;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.Outlook;

/** Time at the wheel: that of one drive, and that of all drives of a day. */
public final class Wheel {

    private Wheel() {
    }

    /** How much longer the road takes than there is time: whole minutes rounded up, zero when there is enough. */
    public static Duration lacking(Drive drive) {
        Duration lacking = wholeMinutes(drive.road().total().minus(drive.time()));
        return lacking.isNegative() ? Duration.ZERO : lacking;
    }

    /** Whether a team would come too late. Parts of a second are rounding. */
    public static boolean isTooLong(Drive drive) {
        return !lacking(drive).isZero();
    }

    /** The driving of a team's day without breaks. */
    public static Duration driving(Collection<Drive> drives, TeamDay day) {
        return drives.stream().filter(drive -> drive.day().filter(day::equals).isPresent())
                .map(drive -> drive.road().driving()).reduce(Duration.ZERO, Duration::plus);
    }

    /** What limits the driving of a day: the event, and the countries of its bases and of the places that it drives to. */
    public static DrivingLaw law(Outlook outlook, Collection<Drive> drives, TeamDay day) {
        return outlook.drivingLaw(Stream.concat(bases(day), drives.stream().filter(drive -> drive.day().filter(day::equals).isPresent())
                .flatMap(drive -> Stream.of(drive.from(), drive.to()))).distinct().toList());
    }

    private static Stream<Identified> bases(TeamDay day) {
        return Stream.of(day.getStart(), day.getEnd()).filter(base -> !Itinerary.isMissing(base)).map(Identified.class::cast);
    }

    /** Whether a day holds more driving than is allowed. */
    public static boolean isOverLimit(Duration driving, DrivingLaw law) {
        return driving.compareTo(law.limit()) > 0;
    }

    /** Rounded up: a distance is an estimate, and clocks on the road show minutes. */
    public static Duration wholeMinutes(Duration duration) {
        return Duration.ofMinutes(Math.floorDiv(duration.toSeconds() + 59, 60));
    }
}
