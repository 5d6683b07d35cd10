package org.straddle.plan;

import java.util.List;
import java.util.Optional;

import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.sky.Window;

/**
 * A stop of a proposal.
 *
 * @param team  who stops
 * @param site  where
 * @param stay  from arrival to departure, whole minutes unless the stop was kept
 * @param turns the kept and the proposed ones, in order
 * @param gain  what the plan would lose in worth without this stop and its turns
 * @param kept  the stop of the event that this one is, when it is pinned or holds a pinned turn; empty
 *              for a new stop
 */
public record PlannedStop(Team team, Site site, Window stay, List<PlannedTurn> turns, double gain,
        Optional<Stop> kept) {

    public PlannedStop {
        turns = List.copyOf(turns);
    }
}
