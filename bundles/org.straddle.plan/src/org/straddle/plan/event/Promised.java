package org.straddle.plan.event;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.straddle.check.Promise;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;

/**
 * A published turn, with what the event still has of it.
 *
 * @param sites every one that lies in all squares that were promised
 */
record Promised(Promise promise, Optional<Team> team, Optional<Bird> bird, List<Site> sites) {

    static Promised of(Promise promise, Outlook outlook) {
        Event event = outlook.event();
        return new Promised(promise,
                event.getTeams().stream().filter(team -> promise.teamId().equals(team.getId())).findFirst(),
                event.getBirds().stream().filter(bird -> promise.birdId().equals(bird.getId())).findFirst(),
                event.getSites().stream().filter(site -> isIn(promise, site, outlook)).toList());
    }

    /** Whether a contact from a site counts for all squares that were promised. */
    static boolean isIn(Promise promise, Site site, Outlook outlook) {
        Set<String> squares = outlook.squares(site).stream().map(Square::name).collect(Collectors.toSet());
        return !promise.squares().isEmpty() && squares.containsAll(promise.squares());
    }
}
