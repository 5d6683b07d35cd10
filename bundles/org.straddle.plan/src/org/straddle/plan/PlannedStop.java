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
 * @param team      who stops
 * @param site      where
 * @param stay      from arrival to departure, whole minutes unless the stop was kept
 * @param turns     the kept and the proposed ones, in order
 * @param gain      what the plan would lose in worth without this stop and its turns, the driving for it saved
 * @param kept      the stop of the event that this one is, when it is pinned, holds a pinned turn, or began before
 *                  the plan does; empty for one that was free to change
 * @param continued the stop of the event that this one takes the place of: same team and site, some of its turns; its
 *                  times and other turns may be new
 */
public record PlannedStop(Team team, Site site, Window stay, List<PlannedTurn> turns, double gain,
        Optional<Stop> kept, Optional<Stop> continued) {

    public PlannedStop {
        turns = List.copyOf(turns);
    }

    public PlannedStop with(List<PlannedTurn> changedTurns) {
        return new PlannedStop(team, site, stay, changedTurns, gain, kept, continued);
    }

    public PlannedStop continuing(Optional<Stop> before, List<PlannedTurn> changedTurns) {
        return new PlannedStop(team, site, stay, changedTurns, gain, kept, before);
    }
}
