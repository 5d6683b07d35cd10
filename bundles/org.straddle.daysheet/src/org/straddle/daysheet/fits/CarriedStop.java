package org.straddle.daysheet.fits;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.daysheet.edit.PlaceStop;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** A stop in somebody's hand. A whole stop may go to any team; an end stays with its own. */
final class CarriedStop implements Carried {

    private static final Catalogue TEXTS = Catalogue.of(CarriedStop.class);

    private final Outlook outlook;
    private final Stop stop;
    private final Window window;
    private final Grip grip;
    private final StopTrial trial;

    CarriedStop(Outlook outlook, Stop stop, Window window, Grip grip) {
        this.outlook = outlook;
        this.stop = stop;
        this.window = window;
        this.grip = grip;
        this.trial = new StopTrial(outlook, Itinerary.of(outlook.event()), stop);
    }

    @Override
    public Grip grip() {
        return grip;
    }

    @Override
    public Window window() {
        return window;
    }

    @Override
    public List<FittingPlace> everywhere(IProgressMonitor monitor) {
        List<Team> teams = grip == Grip.WHOLE ? outlook.event().getTeams()
                : Stream.ofNullable(stop.getTeam()).toList();
        SubMonitor progress = SubMonitor.convert(monitor, teams.size());
        List<FittingPlace> places = new ArrayList<>();
        for (Team team : teams) {
            places.addAll(places(team));
            progress.split(1);
        }
        return List.copyOf(places);
    }

    @Override
    public List<FittingPlace> places(Team team) {
        if (stop.isPinned() || holdsPinnedTurn() && team != stop.getTeam()) {
            return List.of();
        }
        return within(team).flatMap(within -> FittingTimes.of(turningPoints(team), within,
                at -> fits(team, at)).stream()).map(range -> place(team, range)).toList();
    }

    @Override
    public Landing land(Team team, Instant wanted, List<FittingPlace> places, Duration reach) {
        Team owner = grip == Grip.WHOLE ? team : stop.getTeam();
        Instant at = Snap.to(places.stream().filter(place -> place.teamId().equals(owner.getId()))
                .flatMap(place -> Stream.of(place.range().first(), place.range().last())), wanted, reach);
        Window there = Carried.held(window, grip, at);
        List<Turn> leaving = PlaceStop.leaving(stop, there);
        List<Obstacle> obstacles = new ArrayList<>(trial.at(owner, there));
        Optional<Obstacle> pinned = pinned(owner, leaving);
        pinned.ifPresent(obstacle -> obstacles.add(0, obstacle));
        return new Landing(owner.getId(), there, pinned.isPresent() ? Optional.empty()
                : Optional.of(new PlaceStop(stop.getId(), owner.getId(), there)), obstacles,
                Stream.concat(leaving.stream().map(turn -> TEXTS.text("turn.leaves", "bird", name(turn),
                        "time", TimeText.zulu(turn.getStart()))),
                        obstacles.isEmpty() ? trial.cares(owner, there).stream() : Stream.empty()).toList());
    }

    private static String name(Turn turn) {
        return turn.getBird() == null ? TEXTS.text("nobird") : Naming.name(turn.getBird());
    }

    private boolean fits(Team team, Instant at) {
        Window there = Carried.held(window, grip, at);
        // An end that has run into the other is not at this instant.
        boolean reached = (grip == Grip.END ? there.end() : there.start()).equals(at);
        return reached && pinned(team, PlaceStop.leaving(stop, there)).isEmpty() && trial.at(team, there).isEmpty();
    }

    private Optional<Obstacle> pinned(Team team, List<Turn> leaving) {
        if (stop.isPinned()) {
            return Optional.of(new Obstacle("pinned", TEXTS.text("pinned.stop")));
        }
        return team != stop.getTeam() && holdsPinnedTurn() || leaving.stream().anyMatch(Turn::isPinned)
                ? Optional.of(new Obstacle("pinned", TEXTS.text("pinned.within"))) : Optional.empty();
    }

    private boolean holdsPinnedTurn() {
        return stop.getTurns().stream().anyMatch(Turn::isPinned);
    }

    private Collection<Instant> turningPoints(Team team) {
        // Where an end would run into the other.
        Set<Instant> points = new HashSet<>(List.of(Carried.held(window, grip, window.start()).end(),
                Carried.held(window, grip, window.end()).start()));
        if (grip != Grip.END) {
            points.addAll(trial.arrivals(team));
        }
        if (grip == Grip.END) {
            points.addAll(trial.departures(team));
        } else if (grip == Grip.WHOLE) {
            trial.departures(team).forEach(departure -> points.add(departure.minus(window.duration())));
        }
        return points;
    }

    /** The days of the team; nothing fits outside them. */
    private Stream<Window> within(Team team) {
        Stream<Window> days = team.getDays().stream()
                .flatMap((TeamDay day) -> Itinerary.window(day.getFrom(), day.getUntil()).stream());
        // A departure at the very end of a day fits, so the second after it is looked at too.
        return days.map(day -> new Window(day.start(), day.end().plusSeconds(1)));
    }

    private FittingPlace place(Team team, FittingRange range) {
        Window covered = switch (grip) {
            case WHOLE -> new Window(range.first(), range.last().plus(window.duration()));
            case START, END -> new Window(range.first(), range.last().plusSeconds(1));
        };
        return new FittingPlace(team.getId(), covered, range);
    }
}
