package org.straddle.outlook.keeping;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/** A day of a team as far as being late goes: lengths of time and nothing else, so equal days have equal chances. */
record Course(List<Halt> halts) {

    /**
     * @param way   there; empty when nobody knows of a drive
     * @param spare time between being ready and packing; negative for a stop that is too short to set up and take down
     * @param turns how long after the station is ready each begins, by time
     */
    record Halt(Optional<Way> way, Duration spare, List<Duration> turns) {

        Halt by(Way other) {
            return new Halt(Optional.of(other), spare, turns);
        }

        /** How late a team is here that was so late when it left. */
        Delay arrived(Delay before) {
            return way.map(there -> before.plus(there.spread())).orElse(before);
        }

        /** How late it leaves. */
        Delay left(Delay arrived) {
            return arrived.plus(spare.negated()).waiting();
        }
    }

    /**
     * A drive to a stop.
     *
     * @param over      by how much it usually takes longer than there is time; negative when there is more time
     * @param deviation standard deviation of that
     * @param known     the same if somebody knew the drive; empty for one that somebody knows
     */
    record Way(Duration over, Duration deviation, Optional<Duration> known) {

        Spread spread() {
            return Spread.of(over, deviation);
        }
    }

    Course {
        halts = List.copyOf(halts);
    }

    static Course of(Duty duty, StationUp station, HoldFigures figures) {
        List<Halt> halts = new ArrayList<>();
        for (Stay stay : duty.stays()) {
            Instant ready = station.ready(stay.window());
            List<Duration> turns = new ArrayList<>();
            for (Work work : stay.turns()) {
                turns.add(Duration.between(ready, work.window().start()));
            }
            halts.add(new Halt(duty.to(stay).map(drive -> way(drive, stay, figures)),
                    Duration.between(ready, station.packing(stay.window())), List.copyOf(turns)));
        }
        return new Course(halts);
    }

    private static Way way(Drive drive, Stay stay, HoldFigures figures) {
        Duration there = Duration.between(Duty.leaves(drive, figures), stay.window().start());
        return new Way(drive.road().total().minus(there), DriveTime.of(drive.road(), figures).deviation(),
                drive.road().isEntered() ? Optional.empty()
                        : Optional.of(new DriveTime(drive.road(), figures.knownSpread()).deviation()));
    }
}
