package org.straddle.daysheet.sheet;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.check.Finding;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/**
 * What the day sheet shows, in time but not yet in pixels: read once from each finished computation.
 *
 * @param event   the snapshot
 * @param range   whole local days around all that is shown
 * @param busy    from the first team's leaving or stop to the last
 * @param untimed stops and turns that cannot be shown because their times are missing, run backwards or
 *                are far from the event
 */
public record DaySheet(Event event, ZoneId zone, Window range, Window busy, List<SheetDay> days, List<Lane> lanes,
        Map<Bird, BirdMark> birds, int untimed) {

    /**
     * Findings are matched to things by id, so they may be of an earlier snapshot.
     *
     * @return empty when no team has a day and nothing is planned, so that there is no time to show
     */
    public static Optional<DaySheet> of(Outlook outlook, List<Finding> findings, LightMemory light) {
        return new SheetReading(outlook, findings, light).read();
    }

    public boolean hasStops() {
        return lanes.stream().anyMatch(lane -> !lane.stops().isEmpty());
    }

    /** Stops and turns lane by lane, in time order. */
    public List<SheetItem> items() {
        return lanes.stream().flatMap(lane -> lane.items().stream()).toList();
    }

    public Optional<SheetItem> item(String id) {
        return items().stream().filter(item -> item.id().equals(id)).findFirst();
    }

    /** Whether some lane has this light at some time. */
    public boolean has(Light.State state) {
        return lanes.stream().flatMap(lane -> lane.light().stream()).anyMatch(light -> light.state() == state);
    }

    /** Whether anything is known of the light at all. */
    public boolean knowsLight() {
        return lanes.stream().anyMatch(lane -> !lane.light().isEmpty());
    }
}
