package org.straddle.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.straddle.grid.Presence;
import org.straddle.grid.Square;
import org.straddle.model.Access;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Leg;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.sky.Window;

/**
 * An event put as a {@link PlanProblem}, and what its numbers stand for. All judgement of what a team may
 * do lies here, so that ways to plan need not know any of it: which sites may be used, which passes can be
 * worked, what stays fixed.
 */
final class EventProblem {

    /** Used when the event names no repeat worths. Common practice, no source. */
    static final List<Double> DEFAULT_REPEAT_WORTHS = List.of(0.5, 0.25, 0.15, 0.1);

    /** An hour at the wheel has to bring a fiftieth of a square that all chasers need. A choice of ours. */
    private static final double DRIVING_PRICE_PER_HOUR = 0.02;

    /** Every station takes its share of the power of a passband. Common practice, no source. */
    private static final int TEAMS_IN_A_PASSBAND = 2;

    private final Outlook outlook;
    private final ProblemClock clock;
    private final List<Site> sites;
    private final List<Base> bases;
    private final List<Bird> birds;
    private final List<Team> teams;
    private final List<Square> squares;
    private final List<KeptStop> kept;
    private final BitSet usable = new BitSet();
    private final PlanProblem problem;

    private EventProblem(Outlook outlook) {
        this.outlook = outlook;
        Event event = outlook.event();
        clock = ProblemClock.from(outlook.span().start());
        sites = List.copyOf(event.getSites());
        bases = List.copyOf(event.getBases());
        birds = List.copyOf(event.getBirds());
        teams = List.copyOf(event.getTeams());
        squares = List.copyOf(squares(outlook));
        kept = KeptStop.of(event).stream()
                .filter(stop -> sites.contains(stop.site()) && teams.contains(stop.team())).toList();
        IntStream.range(0, sites.size()).filter(site -> mayBeUsed(sites.get(site))).forEach(usable::set);
        PolicyFigures policies = outlook.policies();
        StationTimes times = new StationTimes(EventChances.clockSeconds(policies.setUp()),
                EventChances.clockSeconds(policies.takeDown()), EventChances.clockSeconds(policies.turnGap()));
        List<PlanDay> days = days();
        problem = new PlanProblem(
                sites.stream().map(site -> outlook.squares(site).stream().map(squares::indexOf).toList()).toList(),
                squares.stream().map(outlook::demand).toList(),
                new Tiers(repeatWorths(event)),
                birds.stream().map(bird -> bird.getAccess() == Access.PASSBAND ? TEAMS_IN_A_PASSBAND : 1).toList(),
                days,
                EventChances.of(outlook, clock, times, days, sites, usable, birds),
                kept.stream().map(stop -> fixed(stop, days)).toList(),
                roads(), times, DRIVING_PRICE_PER_HOUR);
    }

    static EventProblem of(Outlook outlook) {
        return new EventProblem(outlook);
    }

    PlanProblem problem() {
        return problem;
    }

    ProblemClock clock() {
        return clock;
    }

    Site site(int index) {
        return sites.get(index);
    }

    Bird bird(int index) {
        return birds.get(index);
    }

    List<Team> teams() {
        return teams;
    }

    /** The team of a stay that lies on a day. */
    Team teamOf(Stay stay) {
        return teams.get(problem.days().get(stay.day()).team());
    }

    Square square(int index) {
        return squares.get(index);
    }

    /** Sites that claim a square and may be used, by index. */
    List<Integer> usableSites(int square) {
        return IntStream.range(0, sites.size()).filter(usable::get)
                .filter(site -> problem.squaresOfSite().get(site).contains(square)).boxed().toList();
    }

    /** The stop that a fixed stay of the problem stands for. */
    KeptStop kept(FixedStay fixed) {
        for (int i = 0; i < kept.size(); i++) {
            if (problem.fixed().get(i) == fixed) {
                return kept.get(i);
            }
        }
        throw new IllegalArgumentException("Not of this event: " + fixed);
    }

    /** Squares that sites claim or that somebody needs. */
    private static TreeSet<Square> squares(Outlook outlook) {
        TreeSet<Square> all = new TreeSet<>();
        outlook.event().getSites().forEach(site -> all.addAll(outlook.squares(site)));
        outlook.event().getDemands().forEach(demand -> parsed(demand.getSquare()).ifPresent(all::add));
        return all;
    }

    private static Optional<Square> parsed(String name) {
        try {
            return Optional.of(Square.parse(name));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static List<Double> repeatWorths(Event event) {
        List<Double> chosen = event.getPolicies() == null ? List.of() : event.getPolicies().getRepeatWorths();
        return chosen.isEmpty() ? DEFAULT_REPEAT_WORTHS
                : chosen.stream().map(worth -> worth >= 0 && worth <= 1 ? worth : 0.0).toList();
    }

    /** Whether the presence in all claimed squares can be argued and no review refuses the site. */
    private boolean mayBeUsed(Site site) {
        Optional<Presence> presence = outlook.isPlaced(site) ? outlook.presence(site) : Optional.empty();
        return presence.isPresent() && presence.get().least() >= outlook.policies().leastPresence()
                && !isRefused(site, outlook.span().start().atZone(outlook.zone()).toLocalDate())
                && !isRefused(site, outlook.span().end().atZone(outlook.zone()).toLocalDate());
    }

    private boolean isRefused(Site site, LocalDate day) {
        return SafetyNotes.of(site, day, outlook.event().getPolicies()).state() instanceof ReviewState.Refused;
    }

    /** The usable days of all teams; where two of one team overlap, the later one begins later. */
    private List<PlanDay> days() {
        List<PlanDay> days = new ArrayList<>();
        for (Team team : teams) {
            int free = Integer.MIN_VALUE;
            List<TeamDay> inOrder = team.getDays().stream()
                    .filter(day -> day.getFrom() != null && day.getUntil() != null && day.getFrom().isBefore(day.getUntil()))
                    .sorted(Comparator.comparing(TeamDay::getFrom).thenComparing(TeamDay::getUntil)).toList();
            for (TeamDay day : inOrder) {
                int from = Math.max(free, clock.ceiling(day.getFrom()));
                int until = Math.min(clock.floor(day.getUntil()), clock.floor(outlook.span().end()));
                if (from < until) {
                    days.add(new PlanDay(teams.indexOf(team), from, until, place(day.getStart()), place(day.getEnd()),
                            EventChances.clockSeconds(outlook.policies().drivingLimit())));
                    free = until;
                }
            }
        }
        return days;
    }

    private int place(Base base) {
        return base != null && bases.contains(base) && outlook.isPlaced(base) ? sites.size() + bases.indexOf(base)
                : RoadTable.NOWHERE;
    }

    private FixedStay fixed(KeptStop stop, List<PlanDay> days) {
        int site = sites.indexOf(stop.site());
        int arrival = clock.floor(stop.window().start());
        int departure = clock.ceiling(stop.window().end());
        List<Chance> turns = stop.turns().stream().filter(turn -> birds.contains(turn.turn().getBird()))
                .map(turn -> fixedTurn(site, birds.indexOf(turn.turn().getBird()), turn.window()))
                .sorted(Comparator.comparingInt(Chance::start)).toList();
        int best = FixedStay.NO_DAY;
        int longest = 0;
        for (int day = 0; day < days.size(); day++) {
            int shared = Math.min(departure, days.get(day).until()) - Math.max(arrival, days.get(day).from());
            if (days.get(day).team() == teams.indexOf(stop.team()) && shared > longest) {
                longest = shared;
                best = day;
            }
        }
        return new FixedStay(best, site, arrival, departure, turns);
    }

    private Chance fixedTurn(int site, int bird, Window window) {
        int start = clock.floor(window.start());
        return new Chance(site, bird, start, Math.max(start + 1, clock.ceiling(window.end())));
    }

    /** A place without a position is as near as none. */
    private RoadTable roads() {
        List<Identified> places = new ArrayList<>(sites);
        places.addAll(bases);
        Leg[][] legs = new Leg[places.size()][places.size()];
        for (int from = 0; from < legs.length; from++) {
            for (int to = 0; to < legs.length; to++) {
                legs[from][to] = from == to ? null : outlook.leg(places.get(from), places.get(to)).orElse(null);
            }
        }
        return new RoadTable(legs.length,
                (from, to) -> legs[from][to] == null ? 0 : EventChances.clockSeconds(legs[from][to].driving()),
                (from, to) -> legs[from][to] == null ? 0 : EventChances.clockSeconds(legs[from][to].total()));
    }
}
