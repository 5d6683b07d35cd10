package org.straddle.daysheet.fits;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.daysheet.edit.PlaceTurn;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * A turn in somebody's hand. A whole turn may go to any stop from which its bird is up.
 *
 * <p>A turn that takes all of its pass that can be had takes all of another pass too, whatever its length; any other
 * turn keeps its length, as far as the pass has room for it.
 */
final class CarriedTurn implements Carried {

    private static final Catalogue TEXTS = Catalogue.of(CarriedTurn.class);

    /** Passes are computed to parts of a second, turns are often written down in minutes. */
    private static final Duration NEARLY = Duration.ofMinutes(1);

    private final Itinerary plan;
    private final Work work;
    private final Grip grip;
    private final TurnTrial trial;
    private final boolean fills;
    private final Map<Stay, List<Window>> free = new ConcurrentHashMap<>();

    CarriedTurn(Outlook outlook, Itinerary plan, Work work, Grip grip) {
        this.plan = plan;
        this.work = work;
        this.grip = grip;
        this.trial = new TurnTrial(outlook, plan, work.turn());
        this.fills = plan.stays().stream().filter(stay -> stay.stop() == work.stop()).flatMap(stay -> free(stay).stream())
                .anyMatch(window -> window.overlaps(work.window())
                        && window.duration().minus(work.window().duration()).compareTo(NEARLY) <= 0);
    }

    @Override
    public Grip grip() {
        return grip;
    }

    @Override
    public Window window() {
        return work.window();
    }

    @Override
    public List<FittingPlace> everywhere(IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, plan.stays().size());
        List<FittingPlace> places = new ArrayList<>();
        for (Stay stay : plan.stays()) {
            places.addAll(places(stay));
            progress.split(1);
        }
        return List.copyOf(places);
    }

    @Override
    public List<FittingPlace> places(Team team) {
        return stays(team).flatMap(stay -> places(stay).stream()).toList();
    }

    @Override
    public Landing land(Team team, Instant wanted, List<FittingPlace> places, Duration reach) {
        if (grip != Grip.WHOLE) {
            Stay own = own();
            Instant at = Snap.to(places.stream().flatMap(place -> Stream.of(place.range().first(), place.range().last())),
                    wanted, reach);
            return landing(own, Carried.held(work.window(), grip, at));
        }
        Window raw = Window.of(wanted, work.window().duration());
        Optional<Stay> stay = stays(team).filter(there -> near(there.window(), raw, reach))
                .max(Comparator.comparing(there -> shared(there.window(), raw)));
        return stay.map(there -> landing(there, settled(there, raw, reach))).orElseGet(() -> new Landing(team.getId(),
                raw, Optional.empty(), List.of(new Obstacle(PlanRule.TURN_OUTSIDE_STOP,
                        TEXTS.text("turn.nostop",
                        "team", Say.team(team), "time", TimeText.zulu(wanted)))), List.of()));
    }

    private Landing landing(Stay stay, Window there) {
        List<Obstacle> obstacles = new ArrayList<>(trial.at(stay, there));
        boolean pinned = work.turn().isPinned();
        if (pinned) {
            obstacles.add(0, new Obstacle("pinned", TEXTS.text("pinned.turn",
                    "bird", Naming.name(work.bird()))));
        }
        return new Landing(stay.team().getId(), there, pinned ? Optional.empty()
                : Optional.of(new PlaceTurn(work.turn().getId(), stay.stop().getId(), there)), obstacles, List.of());
    }

    /** In the free window that asks for the least change of its start, if one is near. */
    private Window settled(Stay stay, Window raw, Duration reach) {
        return reach.isZero() ? raw : free(stay).stream().filter(window -> near(window, raw, reach))
                .map(window -> settled(window, raw, reach))
                .min(Comparator.comparing((Window window) -> Snap.distance(window.start(), raw.start()))).orElse(raw);
    }

    private Window settled(Window room, Window raw, Duration reach) {
        if (fills || room.duration().compareTo(raw.duration()) <= 0) {
            return room;
        }
        Instant latest = room.end().minus(raw.duration());
        Instant start = Snap.to(Stream.of(room.start(), latest), raw.start(), reach);
        return Window.of(start, raw.duration());
    }

    private List<FittingPlace> places(Stay stay) {
        if (work.turn().isPinned() || grip != Grip.WHOLE && stay.stop() != work.stop()) {
            return List.of();
        }
        return free(stay).stream().flatMap(room -> place(stay, room).stream()).toList();
    }

    private Optional<FittingPlace> place(Stay stay, Window room) {
        Window now = work.window();
        Optional<FittingRange> range = switch (grip) {
            case WHOLE -> Optional.of(fills || room.duration().compareTo(now.duration()) <= 0
                    ? new FittingRange(room.start(), room.start())
                    : new FittingRange(room.start(), room.end().minus(now.duration())));
            case START -> range(room.contains(now.end().minusNanos(1)), room.start(), now.end().minusSeconds(60));
            case END -> range(room.contains(now.start()), now.start().plusSeconds(60), room.end());
        };
        return range.map(found -> new FittingPlace(stay.team().getId(),
                grip == Grip.WHOLE ? room : new Window(found.first(), found.last().plusSeconds(1)), found));
    }

    private static Optional<FittingRange> range(boolean there, Instant first, Instant last) {
        return there && !last.isBefore(first) ? Optional.of(new FittingRange(first, last)) : Optional.empty();
    }

    private List<Window> free(Stay stay) {
        return free.computeIfAbsent(stay, trial::free);
    }

    private Stay own() {
        return plan.stays().stream().filter(stay -> stay.stop() == work.stop()).findFirst().orElseThrow();
    }

    private Stream<Stay> stays(Team team) {
        return plan.stays().stream().filter(stay -> stay.team() == team);
    }

    private static boolean near(Window window, Window raw, Duration reach) {
        return window.gapTo(raw).compareTo(reach) <= 0;
    }

    private static Duration shared(Window window, Window raw) {
        return window.intersection(raw).map(Window::duration).orElse(window.gapTo(raw).negated());
    }
}
