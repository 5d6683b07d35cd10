package org.straddle.daysheet.fits;

import java.util.List;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Whether a turn lies in a stop, with time to set the station up before and to take it down after. */
final class StationTime {

    private static final Catalogue TEXTS = Catalogue.of(StationTime.class);

    private StationTime() {
    }

    /** More than one when a turn is at odds with its stop at both ends. */
    static List<Obstacle> obstacles(Outlook outlook, Window stay, Window turn) {
        StationUp station = StationUp.of(outlook.policies());
        return station.broken(stay, turn).stream().map(rule -> new Obstacle(rule, sentence(rule, station, stay))).toList();
    }

    private static String sentence(PlanRule rule, StationUp station, Window stay) {
        return switch (rule) {
            case TURN_BEFORE_SET_UP -> TEXTS.text("station.up",
                    "time", TimeText.zulu(station.ready(stay)));
            case TURN_AFTER_TAKE_DOWN -> TEXTS.text("station.down",
                    "time", TimeText.zulu(station.packing(stay)));
            default -> TEXTS.text("turn.past", "times", Say.during(stay));
        };
    }
}
