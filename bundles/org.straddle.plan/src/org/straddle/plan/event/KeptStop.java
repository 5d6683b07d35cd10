package org.straddle.plan.event;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Bans;
import org.straddle.sky.Window;

/**
 * A stop that stays where and when it is: it is pinned itself, holds a pinned turn, or began before the instant from
 * which a plan is made. A stop that lacks its team, its site or a usable time cannot be planned around; it is nobody's
 * stop and is left alone.
 *
 * @param window from arrival to departure; see {@link #cutBy}
 * @param turns  the kept ones that can be used, in the order of the event
 */
record KeptStop(Stop stop, Team team, Site site, Window window, List<KeptTurn> turns) {

    /** A kept turn with a bird and a usable time. */
    record KeptTurn(Turn turn, Window window) {

        private Optional<KeptTurn> until(Instant cut) {
            return window.end().isAfter(cut)
                    ? KeptStop.window(window.start(), cut).map(cutShort -> new KeptTurn(turn, cutShort))
                    : Optional.of(this);
        }
    }

    /** @param from instant from which a plan is made; empty when nothing began yet */
    static List<KeptStop> of(Event event, Optional<Instant> from) {
        return event.getPlan() == null ? List.of()
                : event.getPlan().getStops().stream().filter(stop -> isKept(stop, from))
                        .flatMap(stop -> of(stop, from).stream()).toList();
    }

    /** Whether a stop is pinned itself, holds a pinned turn, or began before an instant. */
    static boolean isKept(Stop stop, Optional<Instant> from) {
        return isPinned(stop) || began(stop.getArrival(), from);
    }

    static boolean isPinned(Stop stop) {
        return stop.isPinned() || stop.getTurns().stream().anyMatch(Turn::isPinned);
    }

    /** Whether a turn of a kept stop is kept with it. */
    static boolean isKept(Turn turn, Optional<Instant> from) {
        return turn.isPinned() || began(turn.getStart(), from);
    }

    private static boolean began(Instant start, Optional<Instant> from) {
        return start != null && from.isPresent() && start.isBefore(from.get());
    }

    /** Empty when the stop is incomplete. */
    static Optional<KeptStop> of(Stop stop, Optional<Instant> from) {
        if (isMissing(stop.getTeam()) || isMissing(stop.getSite())) {
            return Optional.empty();
        }
        List<KeptTurn> turns = stop.getTurns().stream().filter(turn -> isKept(turn, from))
                .flatMap(turn -> usable(turn).map(w -> new KeptTurn(turn, w)).stream()).toList();
        return window(stop.getArrival(), stop.getDeparture())
                .map(window -> new KeptStop(stop, stop.getTeam(), stop.getSite(), window, turns));
    }

    /** When a turn is, if it has a bird and a time that can be. */
    static Optional<Window> usable(Turn turn) {
        Bird bird = turn.getBird();
        return isMissing(bird) ? Optional.empty() : window(turn.getStart(), turn.getEnd());
    }

    /**
     * The same, but over by the time at which a ban ends a stop that is under way: the team packs up then. What is
     * pinned is not cut, nor is what was over before; a turn that began is cut with its stop, or dropped when there is
     * no time for it besides taking down.
     */
    KeptStop cutBy(Bans bans, Optional<Instant> from, Duration takeDown) {
        if (from.isEmpty() || isPinned(stop) || !window.contains(from.get())) {
            return this;
        }
        Window rest = new Window(from.get(), window.end());
        Optional<Instant> end = bans.onStop(team, site, rest).stream()
                .flatMap(ban -> Bans.period(ban, rest).stream()).map(Window::start).min(Instant::compareTo)
                .filter(window.start()::isBefore);
        return end.map(cut -> new KeptStop(stop, team, site, new Window(window.start(), cut), turns.stream()
                .flatMap(turn -> turn.until(cut.minus(takeDown)).stream()).toList())).orElse(this);
    }

    /** What an edit must not have changed between making a plan and applying it. */
    String facts() {
        StringBuilder facts = new StringBuilder(String.join(" ", stop.getId(), team.getId(), site.getId(),
                stop.getArrival().toString(), stop.getDeparture().toString()));
        turns.forEach(t -> facts.append(' ').append(t.turn().getId()).append(' ').append(t.turn().getBird().getId())
                .append(' ').append(t.turn().getStart()).append(' ').append(t.turn().getEnd()));
        return facts.toString();
    }

    static boolean isMissing(EObject object) {
        return object == null || object.eIsProxy();
    }

    private static Optional<Window> window(Instant start, Instant end) {
        return start != null && end != null && start.isBefore(end) ? Optional.of(new Window(start, end))
                : Optional.empty();
    }
}
