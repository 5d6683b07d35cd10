package org.straddle.outlook.itinerary;

import java.util.List;

import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.sky.Window;

/**
 * A stop that says who is where and when; rules about stops read only these, because another rule tells
 * what is missing.
 *
 * @param turns the turns that say which bird and when, by start
 */
public record Stay(Stop stop, Team team, Site site, Window window, List<Work> turns) {
}
