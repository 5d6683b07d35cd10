package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.util.Optional;

import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Road;

/**
 * A drive that the plan asks of a team.
 *
 * @param day    the team's day; empty when the stops lie on no day of the team
 * @param before the stop it leaves; empty when it leaves a base
 * @param after  the stop it reaches; empty when it reaches a base
 * @param from   the base or site it leaves
 * @param to     the base or site it reaches
 * @param road   what is known of the way
 * @param time   between leaving and being due
 */
public record Drive(Team team, Optional<TeamDay> day, Optional<Stay> before, Optional<Stay> after, Identified from,
        Identified to, Road road, Duration time) {
}
