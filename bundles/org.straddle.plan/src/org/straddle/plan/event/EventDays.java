package org.straddle.plan.event;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.Ban;
import org.straddle.model.Base;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Bans;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.Road;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.RoadTable;
import org.straddle.sky.Window;

/**
 * The days of an event's teams that are still to be planned, and where each team is when its day begins. When a plan is
 * made from an instant, a day under way begins then: at the site of the stop under way, on the road between the last
 * stop and the next one planned, or at the base as long as the team has time to stay there.
 */
final class EventDays {

    private final Outlook outlook;
    private final Bans bans;
    private final ProblemClock clock;
    private final Places places;
    private final List<Team> teams;
    private final DutyHours hours;
    private final List<KeptStop> kept;
    private final Optional<Instant> from;
    private final List<PlanDay> days = new ArrayList<>();

    private EventDays(Outlook outlook, Bans bans, ProblemClock clock, Places places, DutyHours hours, List<KeptStop> kept,
            Optional<Instant> from) {
        this.outlook = outlook;
        this.bans = bans;
        this.clock = clock;
        this.places = places;
        this.teams = List.copyOf(outlook.event().getTeams());
        this.hours = hours;
        this.kept = kept;
        this.from = from;
        teams.forEach(this::add);
    }

    /**
     * By team and time; where two days of one team overlap, the later one begins later.
     *
     * @param places is told of places on the road
     */
    static List<PlanDay> of(Outlook outlook, Bans bans, ProblemClock clock, Places places, DutyHours hours, List<KeptStop> kept,
            Optional<Instant> from) {
        return new EventDays(outlook, bans, clock, places, hours, kept, from).days;
    }

    private void add(Team team) {
        int free = Integer.MIN_VALUE;
        List<TeamDay> inOrder = inOrder(team);
        List<Window> duties = hours.of(team, inOrder.stream().map(day -> new Window(day.getFrom(), day.getUntil())).toList());
        for (TeamDay day : inOrder) {
            Window duty = duties.get(inOrder.indexOf(day));
            int start = Math.max(free, clock.ceiling(duty.start()));
            int until = Math.min(clock.floor(duty.end()), clock.floor(outlook.span().end()));
            if (start < until) {
                PlanDay whole = new PlanDay(teams.indexOf(team), start, until, place(day.getStart()),
                        place(day.getEnd()), EventChances.clockSeconds(law(day).limit()),
                        pauses(team, start, until));
                rest(whole, team).ifPresent(days::add);
                free = until;
            }
        }
    }

    /**
     * Which countries a day touches is known only when it is planned: the strictest counts of those that it begins, ends or can
     * come to. A site is out of reach if even a day with no other stop drives longer than it may.
     */
    private DrivingLaw law(TeamDay day) {
        List<Identified> near = Stream.of(day.getStart(), day.getEnd()).filter(base -> place(base) != RoadTable.NOWHERE)
                .map(Identified.class::cast).collect(Collectors.toCollection(ArrayList::new));
        List<Identified> bases = List.copyOf(near);
        Duration most = outlook.drivingLaw(bases).limit();
        outlook.event().getSites().stream().filter(outlook::isPlaced).filter(site -> bases.stream()
                .map(base -> outlook.road(base, site).map(Road::driving).orElse(Duration.ZERO)).reduce(Duration.ZERO, Duration::plus)
                .compareTo(most) <= 0).forEach(near::add);
        return outlook.drivingLaw(near);
    }

    private static List<TeamDay> inOrder(Team team) {
        return team.getDays().stream()
                .filter(day -> day.getFrom() != null && day.getUntil() != null && day.getFrom().isBefore(day.getUntil()))
                .sorted(Comparator.comparing(TeamDay::getFrom).thenComparing(TeamDay::getUntil)).toList();
    }

    private int place(Base base) {
        return base != null && outlook.event().getBases().contains(base) && outlook.isPlaced(base) ? places.of(base)
                : RoadTable.NOWHERE;
    }

    private List<PlanDay.Pause> pauses(Team team, int start, int until) {
        List<PlanDay.Pause> pauses = new ArrayList<>();
        Stream.concat(hours.meals(team, clock.window(start, until)).stream()
                .map(meal -> new PlanDay.Pause(clock.floor(meal.start()), clock.ceiling(meal.end()))), bans.all().stream().filter(ban -> Bans.forbidsDrive(ban, team))
                .flatMap(ban -> period(ban, start, until).stream()))
                .sorted(Comparator.comparingInt(PlanDay.Pause::from)).forEach(pause -> {
                    int last = pauses.size() - 1;
                    if (last >= 0 && pause.from() <= pauses.get(last).until()) {
                        pauses.set(last, new PlanDay.Pause(pauses.get(last).from(),
                                Math.max(pauses.get(last).until(), pause.until())));
                    } else {
                        pauses.add(pause);
                    }
                });
        return pauses;
    }

    private Optional<PlanDay.Pause> period(Ban ban, int start, int until) {
        return Bans.period(ban, clock.window(start, until))
                .map(window -> new PlanDay.Pause(clock.floor(window.start()), clock.ceiling(window.end())));
    }

    /** What is left of a day from the instant on; all of it when that is before. */
    private Optional<PlanDay> rest(PlanDay whole, Team team) {
        if (from.isEmpty() || clock.ceiling(from.get()) <= whole.from()) {
            return Optional.of(whole);
        }
        int now = clock.ceiling(from.get());
        if (now >= whole.until()) {
            return Optional.empty();
        }
        int at = whole.startPlace();
        int left = whole.from();
        int driven = 0;
        boolean waiting = true;
        for (KeptStop stop : stopsOf(team, whole)) {
            if (stop.window().start().isBefore(from.get())) {
                int site = places.of(stop.site());
                driven += places.drivingSeconds(at, site);
                at = site;
                left = clock.ceiling(stop.window().end());
                waiting = false;
            }
        }
        Optional<Heading> next = heading(whole, team, at);
        int begun = next.isPresent() ? departure(whole, next.get(), left, waiting) : left;
        if (left > now || next.isEmpty() || begun >= now) {
            return Optional.of(from(whole, now, at, driven));
        }
        Places.OnTheRoad road = places.onTheRoad(at, next.get().place, now - begun);
        return Optional.of(from(whole, now, road.place(), driven + road.drivenSeconds()));
    }

    private PlanDay from(PlanDay whole, int now, int place, int driven) {
        return new PlanDay(whole.team(), now, whole.until(), place, whole.endPlace(),
                Math.max(0, whole.drivingLimit() - driven), whole.pauses());
    }

    /** Where a team was going, and when it was to be there. */
    private record Heading(int place, int due) {
    }

    /** A team that works goes on at once; from its start it leaves when it has to. */
    private int departure(PlanDay whole, Heading heading, int left, boolean waiting) {
        return waiting ? Math.max(left, heading.due - places.totalSeconds(whole.startPlace(), heading.place)) : left;
    }

    private Optional<Heading> heading(PlanDay whole, Team team, int at) {
        return stops().stream()
                .filter(stop -> stop.getTeam() == team && stop.getArrival() != null && stop.getSite() != null
                        && places.knows(stop.getSite())
                        && !stop.getArrival().isBefore(from.get()) && clock.floor(stop.getArrival()) < whole.until())
                .min(Comparator.comparing(stop -> stop.getArrival()))
                .map(stop -> new Heading(places.of(stop.getSite()), clock.floor(stop.getArrival())))
                .or(() -> whole.endPlace() == RoadTable.NOWHERE || at == whole.startPlace() ? Optional.empty()
                        : Optional.of(new Heading(whole.endPlace(), whole.until())));
    }

    private List<Stop> stops() {
        return outlook.event().getPlan() == null ? List.of() : outlook.event().getPlan().getStops();
    }

    private List<KeptStop> stopsOf(Team team, PlanDay day) {
        return kept.stream().filter(stop -> stop.team() == team
                && clock.floor(stop.window().start()) < day.until() && clock.ceiling(stop.window().end()) > day.from())
                .sorted(Comparator.comparing(stop -> stop.window().start())).toList();
    }
}
