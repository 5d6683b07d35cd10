package org.straddle.outlook.keeping;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.straddle.model.Turn;
import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/**
 * How likely the turns of one duty are kept. The team leaves its base in time; it is late at a stop by how late it left and
 * by how much longer the drive took than there is time; a turn is kept when the station is up as it begins. Then the team
 * stays until its planned departure, or until it has set up and taken down if it came too late for that.
 *
 * @param chances by turn, 0 to 1
 * @param whole   chance that all of them are kept
 */
public record DayKeeping(Map<Turn, Double> chances, double whole) {

    public static DayKeeping of(Duty duty, PolicyFigures policies, HoldFigures figures) {
        return of(duty, policies, drive -> DriveTime.of(drive.road(), figures).spread(), figures);
    }

    /** The same if drives were known better or worse. @param spreads of a drive, over its time at the wheel */
    static DayKeeping of(Duty duty, PolicyFigures policies, ToDoubleFunction<Drive> spreads, HoldFigures figures) {
        Map<Turn, Double> chances = new HashMap<>();
        StationUp station = StationUp.of(policies);
        Delay delay = Delay.none();
        Delay allKept = Delay.none();
        for (Stay stay : duty.stays()) {
            Optional<Spread> lateness = duty.to(stay).map(drive -> lateness(drive, stay, spreads, figures));
            if (lateness.isPresent()) {
                delay = delay.plus(lateness.get());
                allKept = allKept.plus(lateness.get());
            }
            Instant ready = station.ready(stay.window());
            for (Work work : stay.turns()) {
                Duration most = Duration.between(ready, work.window().start());
                chances.put(work.turn(), delay.chance(most));
                allKept = allKept.within(most);
            }
            // Negative for a stop that is too short to set up and take down.
            Duration spare = Duration.between(ready, station.packing(stay.window()));
            delay = delay.plus(spare.negated()).waiting();
            allKept = allKept.plus(spare.negated()).waiting();
        }
        return new DayKeeping(Map.copyOf(chances), allKept.chance(Duration.ofDays(1)));
    }

    /** How much later a drive makes a team than its planned arrival. */
    private static Spread lateness(Drive drive, Stay stay, ToDoubleFunction<Drive> spreads, HoldFigures figures) {
        Duration there = Duration.between(Duty.leaves(drive, figures), stay.window().start());
        return Spread.of(drive.road().total().minus(there),
                new DriveTime(drive.road(), spreads.applyAsDouble(drive)).deviation());
    }

    /** How many turns it expects to keep. */
    public double expected() {
        return chances.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
