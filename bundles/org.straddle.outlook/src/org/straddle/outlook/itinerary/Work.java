package org.straddle.outlook.itinerary;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.sky.Window;

/** A turn that says which bird is worked when, with its stop. */
public record Work(Turn turn, Stop stop, Team team, Site site, Bird bird, Window window) {
}
