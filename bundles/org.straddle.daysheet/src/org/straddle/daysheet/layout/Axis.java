package org.straddle.daysheet.layout;

import java.util.List;
import java.util.Optional;

/**
 * The head of the sheet: days, and below them the hours in UTC and in the event's zone.
 *
 * @param utcRow   the UTC hours, over the lanes
 * @param localRow the local hours, over the lanes
 * @param hours    x of the lines that the UTC labels stand on
 */
public record Axis(Box box, List<DayTab> days, Box utcRow, Box localRow, List<Label> utc, List<Label> local,
        Optional<Label> utcName, Optional<Label> localName, List<Integer> hours, List<Integer> localHours) {
}
