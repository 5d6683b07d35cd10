package org.straddle.outlook.keeping;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
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
 * @param chances by turn, 0 to 1, in order of time
 * @param whole   chance that all of them are kept
 */
public record DayKeeping(Map<Turn, Double> chances, double whole) {

    public static DayKeeping of(Duty duty, PolicyFigures policies, HoldFigures figures) {
        return of(duty, policies, drive -> DriveTime.of(drive.road(), figures).spread(), figures);
    }

    /** The same if drives were known better or worse. @param spreads of a drive, over its time at the wheel */
    static DayKeeping of(Duty duty, PolicyFigures policies, ToDoubleFunction<Drive> spreads, HoldFigures figures) {
        Map<Turn, Double> chances = chances(duty, policies, spreads, figures);
        StationUp station = StationUp.of(policies);
        Delay allKept = Delay.none();
        for (Stay stay : duty.stays()) {
            allKept = arrived(allKept, stay, duty, spreads, figures);
            Instant ready = station.ready(stay.window());
            for (Work work : stay.turns()) {
                allKept = allKept.within(Duration.between(ready, work.window().start()));
            }
            allKept = left(allKept, stay, station);
        }
        return new DayKeeping(Collections.unmodifiableMap(chances), allKept.chance(Duration.ofDays(1)));
    }

    /** The chances of the turns alone, which is quicker. */
    static Map<Turn, Double> chances(Duty duty, PolicyFigures policies, HoldFigures figures) {
        return chances(duty, policies, drive -> DriveTime.of(drive.road(), figures).spread(), figures);
    }

    /** The same if drives were known better or worse. */
    static Map<Turn, Double> chances(Duty duty, PolicyFigures policies, ToDoubleFunction<Drive> spreads, HoldFigures figures) {
        Map<Turn, Double> chances = new LinkedHashMap<>();
        StationUp station = StationUp.of(policies);
        Delay delay = Delay.none();
        for (Stay stay : duty.stays()) {
            delay = arrived(delay, stay, duty, spreads, figures);
            Instant ready = station.ready(stay.window());
            for (Work work : stay.turns()) {
                chances.put(work.turn(), delay.chance(Duration.between(ready, work.window().start())));
            }
            delay = left(delay, stay, station);
        }
        return chances;
    }

    /** After the drive to a stop, if there is one. */
    private static Delay arrived(Delay before, Stay stay, Duty duty, ToDoubleFunction<Drive> spreads, HoldFigures figures) {
        return duty.to(stay).map(drive -> before.plus(lateness(drive, stay, spreads, figures))).orElse(before);
    }

    /** When a team leaves a stop. The time to spare is negative for one that is too short to set up and take down. */
    private static Delay left(Delay arrived, Stay stay, StationUp station) {
        Duration spare = Duration.between(station.ready(stay.window()), station.packing(stay.window()));
        return arrived.plus(spare.negated()).waiting();
    }

    /** How much later a drive makes a team than its planned arrival. */
    private static Spread lateness(Drive drive, Stay stay, ToDoubleFunction<Drive> spreads, HoldFigures figures) {
        Duration there = Duration.between(Duty.leaves(drive, figures), stay.window().start());
        return Spread.of(drive.road().total().minus(there),
                new DriveTime(drive.road(), spreads.applyAsDouble(drive)).deviation());
    }

    /** How many turns it expects to keep. */
    public double expected() {
        return expected(chances);
    }

    /** How many turns with these chances are expected to be kept. */
    static double expected(Map<Turn, Double> chances) {
        return chances.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
