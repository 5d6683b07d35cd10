package org.straddle.daysheet.fits;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.straddle.check.CheckRule;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.BirdHours;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Licences;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.plan.SiteUse;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.worth.EventWorth;
import org.straddle.worth.TurnChance;

/** Where a team could stop in its free time, and what that would bring. */
public final class StopOpenings {

    private static final Catalogue TEXTS = Catalogue.of(StopOpenings.class);

    /**
     * A site that a team could go to.
     *
     * @param window   from the earliest arrival to the latest departure, whole minutes; empty when there is none
     * @param passes   how many can be worked then
     * @param adds     how many more chasers the plan as it stands would be expected to serve
     * @param obstacle why a team cannot stop there; empty when it can
     */
    public record StopOpening(Site site, Optional<Window> window, int passes, double adds, Optional<Obstacle> obstacle) {

        public boolean fits() {
            return obstacle.isEmpty();
        }
    }

    private static final Comparator<StopOpening> BEST_FIRST = Comparator
            .comparing((StopOpening opening) -> !opening.fits())
            .thenComparing(Comparator.comparingDouble(StopOpening::adds).reversed())
            .thenComparing(opening -> String.valueOf(opening.site().getName()));

    private final Outlook outlook;
    private final Itinerary plan;
    private final FreeTime free;
    private final Duration least;
    private final EventWorth worth;
    private final Collection<TurnChance> planned;

    private StopOpenings(Outlook outlook, FreeTime free) {
        this.outlook = outlook;
        this.free = free;
        plan = Itinerary.of(outlook.event());
        worth = EventWorth.of(outlook);
        planned = worth.turns().values();
        least = outlook.policies().setUp().plus(outlook.policies().minimumTurn()).plus(outlook.policies().takeDown());
    }

    /** One for each site of the event: those where nothing is wrong first, and of them what adds most. */
    public static List<StopOpening> of(Outlook outlook, FreeTime free) {
        StopOpenings openings = new StopOpenings(outlook, free);
        return outlook.event().getSites().stream().map(openings::at).sorted(BEST_FIRST).toList();
    }

    /** Passes that could be worked in a stop that is not in the plan yet, one after the other: as many as go. */
    public static List<Openings.Opening> turns(Outlook outlook, FreeTime free, StopOpening opening) {
        return new StopOpenings(outlook, free).turns(opening.site(), opening.window().orElseThrow());
    }

    private StopOpening at(Site site) {
        Optional<String> unusable = SiteUse.whyNot(outlook, site, TEXTS.text("site"));
        if (unusable.isPresent()) {
            return without(site, new Obstacle("site", unusable.get()));
        }
        Optional<Obstacle> alone = CrewLimits.onStops(outlook, free.team());
        if (alone.isPresent()) {
            return without(site, alone.get());
        }
        Instant arrival = ceiling(free.window().start().plus(drive(free.from(), site)));
        Instant departure = free.window().end().minus(drive(free.to(), site)).truncatedTo(ChronoUnit.MINUTES);
        if (departure.isBefore(arrival.plus(least))) {
            Duration needed = Duration.between(free.window().start(), arrival).plus(least)
                    .plus(Duration.between(departure, free.window().end()));
            return without(site, new Obstacle(PlanRule.DRIVE_TOO_LONG, TEXTS.text("stop.room", "need", Say.need(needed),
                    "have", Say.have(free.window().duration()))));
        }
        return at(site, new Window(arrival, departure));
    }

    private StopOpening at(Site site, Window whole) {
        Stop stop = Fresh.stop();
        stop.setTeam(free.team());
        stop.setSite(site);
        StopTrial trial = new StopTrial(outlook, plan, stop);
        Optional<Window> fitting = longestFitting(trial, whole);
        if (fitting.isEmpty()) {
            Obstacle first = trial.at(free.team(), whole).stream().findFirst()
                    .orElse(new Obstacle(CheckRule.STOP_SHORT.id(), TEXTS.text("stop.short")));
            return without(site, first);
        }
        List<TurnChance> turns = turns(site, fitting.get()).stream()
                .map(turn -> worth.chance(turn.pass(), turn.window())).toList();
        List<TurnChance> all = new ArrayList<>(planned);
        all.addAll(turns);
        return new StopOpening(site, fitting, turns.size(), worth.of(all).served() - worth.of(planned).served(), Optional.empty());
    }

    private static StopOpening without(Site site, Obstacle obstacle) {
        return new StopOpening(site, Optional.empty(), 0, 0, Optional.of(obstacle));
    }

    /** What may be wrong begins and ends where the trial may turn, so the stretches between say it all. */
    private Optional<Window> longestFitting(StopTrial trial, Window whole) {
        TreeSet<Instant> edges = new TreeSet<>();
        trial.arrivals(free.team()).forEach(edges::add);
        trial.departures(free.team()).forEach(edges::add);
        edges.add(whole.end());
        List<Window> fitting = new ArrayList<>();
        Instant since = whole.start();
        for (Instant edge : edges.subSet(whole.start(), false, whole.end(), true)) {
            Window stretch = new Window(since, edge);
            if (trial.at(free.team(), stretch).isEmpty()) {
                Window last = fitting.isEmpty() ? null : fitting.get(fitting.size() - 1);
                if (last != null && last.end().equals(since)) {
                    fitting.set(fitting.size() - 1, new Window(last.start(), edge));
                } else {
                    fitting.add(stretch);
                }
            }
            since = edge;
        }
        return fitting.stream().flatMap(window -> Itinerary.window(ceiling(window.start()),
                window.end().truncatedTo(ChronoUnit.MINUTES)).stream())
                .filter(window -> window.duration().compareTo(least) >= 0)
                .max(Comparator.comparing(Window::duration));
    }

    /** One after the other: as many as go. The same are offered and put in. */
    private List<Openings.Opening> turns(Site site, Window stay) {
        List<Openings.Opening> turns = new ArrayList<>();
        Instant ready = Instant.MIN;
        for (Openings.Opening next : Openings.of(outlook, plan, new Stay(Fresh.stop(), free.team(), site, stay, List.of())).stream()
                .filter(turn -> isWorthAStop(turn, site)).sorted(Comparator.comparing(turn -> turn.window().end())).toList()) {
            if (!next.window().start().isBefore(ready)) {
                turns.add(next);
                ready = next.window().end().plus(outlook.policies().turnGap());
            }
        }
        return turns;
    }

    /** Within the event's own limits, on a bird that is not known to be silent and that the team may work. */
    private boolean isWorthAStop(Openings.Opening turn, Site site) {
        return turn.window().duration().compareTo(outlook.policies().minimumTurn()) >= 0
                && turn.pass().pass().peakElevationDeg() >= outlook.policies().minimumPeakElevationDeg()
                && !BirdHours.isNotWorking(turn.pass().bird())
                && Licences.broken(outlook, free.team(), site, turn.pass().bird()).isEmpty();
    }

    private Duration drive(Optional<Identified> place, Site site) {
        return place.flatMap(there -> outlook.road(there, site)).map(drive -> drive.total()).orElse(Duration.ZERO);
    }

    private static Instant ceiling(Instant instant) {
        return instant.plusSeconds(59).plusNanos(999_999_999).truncatedTo(ChronoUnit.MINUTES);
    }
}
