package org.straddle.daysheet.fits;

import java.util.List;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.things.Times;
import org.straddle.sky.Window;

/** Whether a turn lies in a stop, with time to set the station up before and to take it down after. */
final class StationTime {

    private StationTime() {
    }

    /** More than one when a turn is at odds with its stop at both ends. */
    static List<Obstacle> obstacles(Outlook outlook, Window stay, Window turn) {
        StationUp station = StationUp.of(outlook.policies());
        return station.broken(stay, turn).stream().map(rule -> new Obstacle(rule, sentence(rule, station, stay))).toList();
    }

    private static String sentence(PlanRule rule, StationUp station, Window stay) {
        return switch (rule) {
            case TURN_BEFORE_SET_UP -> "the station is up only at " + Times.utcClock(station.ready(stay));
            case TURN_AFTER_TAKE_DOWN -> "the station comes down from " + Times.utcClock(station.packing(stay)) + " on";
            default -> "reaches out of the stop, " + Say.during(stay);
        };
    }
}
