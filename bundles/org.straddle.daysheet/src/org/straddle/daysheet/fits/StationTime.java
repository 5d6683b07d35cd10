package org.straddle.daysheet.fits;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.things.Times;
import org.straddle.sky.Window;

/** Whether a turn lies in a stop, with time to set the station up before and to take it down after. */
final class StationTime {

    private StationTime() {
    }

    /** More than one when a turn is at odds with its stop at both ends. */
    static List<Obstacle> obstacles(Outlook outlook, Window stay, Window turn) {
        List<Obstacle> obstacles = new ArrayList<>();
        Instant ready = stay.start().plus(outlook.policies().setUp());
        Instant packing = stay.end().minus(outlook.policies().takeDown());
        if (!stay.contains(turn)) {
            obstacles.add(new Obstacle("turn-outside-stop", "reaches out of the stop, " + Say.during(stay)));
        }
        if (turn.start().isBefore(ready) && stay.contains(turn.start())) {
            obstacles.add(new Obstacle("turn-before-set-up", "the station is up only at " + Times.utcClock(ready)));
        }
        if (turn.end().isAfter(packing) && !turn.end().isAfter(stay.end())) {
            obstacles.add(new Obstacle("turn-after-take-down", "the station comes down from "
                    + Times.utcClock(packing) + " on"));
        }
        return obstacles;
    }
}
