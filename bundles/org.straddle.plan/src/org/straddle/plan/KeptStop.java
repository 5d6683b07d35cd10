package org.straddle.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.sky.Window;

/**
 * A stop that stays where and when it is: it is pinned itself or holds a pinned turn. A stop that lacks
 * its team, its site or a usable time cannot be planned around; it is nobody's stop and is left alone.
 *
 * @param turns the pinned ones that can be used, in the order of the event
 */
record KeptStop(Stop stop, Team team, Site site, Window window, List<KeptTurn> turns) {

    /** A pinned turn with a bird and a usable time. */
    record KeptTurn(Turn turn, Window window) {
    }

    static List<KeptStop> of(Event event) {
        return event.getPlan() == null ? List.of()
                : event.getPlan().getStops().stream().filter(KeptStop::isKept).flatMap(stop -> of(stop).stream())
                        .toList();
    }

    /** Whether a stop is pinned itself or holds a pinned turn. */
    static boolean isKept(Stop stop) {
        return stop.isPinned() || stop.getTurns().stream().anyMatch(Turn::isPinned);
    }

    /** Empty when the stop is incomplete. */
    static Optional<KeptStop> of(Stop stop) {
        if (isMissing(stop.getTeam()) || isMissing(stop.getSite())) {
            return Optional.empty();
        }
        List<KeptTurn> turns = stop.getTurns().stream()
                .filter(turn -> turn.isPinned() && !isMissing(turn.getBird()))
                .flatMap(turn -> window(turn.getStart(), turn.getEnd()).map(w -> new KeptTurn(turn, w)).stream())
                .toList();
        return window(stop.getArrival(), stop.getDeparture())
                .map(window -> new KeptStop(stop, stop.getTeam(), stop.getSite(), window, turns));
    }

    /** What an edit must not have changed between making a plan and applying it. */
    String facts() {
        StringBuilder facts = new StringBuilder(String.join(" ", stop.getId(), team.getId(), site.getId(),
                window.toString()));
        turns.forEach(t -> facts.append(' ').append(t.turn().getId()).append(' ').append(t.turn().getBird().getId())
                .append(' ').append(t.window()));
        return facts.toString();
    }

    private static boolean isMissing(EObject object) {
        return object == null || object.eIsProxy();
    }

    private static Optional<Window> window(Instant start, Instant end) {
        return start != null && end != null && start.isBefore(end) ? Optional.of(new Window(start, end))
                : Optional.empty();
    }
}
