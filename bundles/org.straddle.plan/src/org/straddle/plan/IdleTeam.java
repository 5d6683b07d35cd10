package org.straddle.plan;

import org.straddle.model.Team;

/**
 * A team to which a plan gives no stop at all.
 *
 * @param why for the user, a sentence or two
 */
public record IdleTeam(Team team, String why) {
}
