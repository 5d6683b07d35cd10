package org.straddle.outlook.itinerary;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.sky.Window;

/** The plan as rules read it: the complete stops and turns, by time, with ties settled by team number and id. */
public final class Itinerary {

    public static final Comparator<Stay> BY_TIME = Comparator
            .comparing(Stay::window, Window.IN_TIME_ORDER).thenComparing(stay -> stay.team().getNumber())
            .thenComparing(stay -> String.valueOf(stay.stop().getId()));
    public static final Comparator<Work> TURNS_BY_TIME = Comparator
            .comparing(Work::window, Window.IN_TIME_ORDER).thenComparing(work -> work.team().getNumber())
            .thenComparing(work -> String.valueOf(work.turn().getId()));

    private final List<Stay> stays;
    private final List<Work> turns;
    private final Map<Team, List<Stay>> byTeam;
    private final Map<Site, List<Stay>> bySite;
    private final Map<Bird, List<Work>> byBird;

    /** @param stays in order of time, such as a plan that is only thought of */
    public Itinerary(List<Stay> stays) {
        this.stays = List.copyOf(stays);
        turns = stays.stream().flatMap(stay -> stay.turns().stream()).sorted(TURNS_BY_TIME).toList();
        byTeam = stays.stream().collect(Collectors.groupingBy(Stay::team, LinkedHashMap::new, Collectors.toList()));
        bySite = stays.stream().collect(Collectors.groupingBy(Stay::site, LinkedHashMap::new, Collectors.toList()));
        byBird = turns.stream().collect(Collectors.groupingBy(Work::bird, LinkedHashMap::new, Collectors.toList()));
    }

    public static Itinerary of(Event event) {
        return new Itinerary(stops(event).flatMap(stop -> stay(stop).stream()).sorted(BY_TIME).toList());
    }

    /** Every stop, complete or not. */
    public static Stream<Stop> stops(Event event) {
        return event.getPlan() == null ? Stream.empty() : event.getPlan().getStops().stream();
    }

    public List<Stay> stays() {
        return stays;
    }

    /** The turns of all stays, by start. */
    public List<Work> turns() {
        return turns;
    }

    /** Who has stays, with them by time. */
    public Map<Team, List<Stay>> byTeam() {
        return Collections.unmodifiableMap(byTeam);
    }

    /** The stays of a team, by time. */
    public List<Stay> of(Team team) {
        return byTeam.getOrDefault(team, List.of());
    }

    /** The stay that a stop stands for; empty when the stop is not complete. */
    public Optional<Stay> of(Stop stop) {
        return stays.stream().filter(stay -> stay.stop() == stop).findFirst();
    }

    /** The stays at a site, by time. */
    public List<Stay> at(Site site) {
        return bySite.getOrDefault(site, List.of());
    }

    /** The turns on a bird, by start. */
    public List<Work> on(Bird bird) {
        return byBird.getOrDefault(bird, List.of());
    }

    private static Optional<Stay> stay(Stop stop) {
        Optional<Window> window = window(stop.getArrival(), stop.getDeparture());
        if (window.isEmpty() || isMissing(stop.getTeam()) || isMissing(stop.getSite())) {
            return Optional.empty();
        }
        List<Work> turns = stop.getTurns().stream().flatMap(turn -> work(stop, turn).stream()).sorted(TURNS_BY_TIME)
                .toList();
        return Optional.of(new Stay(stop, stop.getTeam(), stop.getSite(), window.get(), turns));
    }

    private static Optional<Work> work(Stop stop, Turn turn) {
        return isMissing(turn.getBird()) ? Optional.empty() : window(turn.getStart(), turn.getEnd())
                .map(window -> new Work(turn, stop, stop.getTeam(), stop.getSite(), turn.getBird(), window));
    }

    /** Not set, or set to something whose file is gone. */
    public static boolean isMissing(EObject object) {
        return object == null || object.eIsProxy();
    }

    /** Empty unless the end is after the start. */
    public static Optional<Window> window(Instant start, Instant end) {
        return start != null && end != null && start.isBefore(end) ? Optional.of(new Window(start, end))
                : Optional.empty();
    }
}
