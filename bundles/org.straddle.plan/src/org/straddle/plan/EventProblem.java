package org.straddle.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.straddle.grid.Square;
import org.straddle.model.Access;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Bans;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Window;

/**
 * An event put as a {@link PlanProblem}, and what its numbers stand for. All judgement of what a team may
 * do lies here, so that ways to plan need not know any of it: which sites may be used, which passes can be
 * worked, what stays fixed, what is banned, and what an earlier plan committed.
 */
final class EventProblem {

    /** An hour at the wheel has to bring a fiftieth of a square that all chasers need. A choice of ours. */
    private static final double DRIVING_PRICE_PER_HOUR = 0.02;

    /** Every station takes its share of the power of a passband. Common practice, no source. */
    private static final int TEAMS_IN_A_PASSBAND = 2;

    private final Outlook outlook;
    private final Replan replan;
    private final List<Ban> newBans;
    private final Bans bans;
    private final ProblemClock clock;
    private final List<Site> sites;
    private final List<Bird> birds;
    private final List<Team> teams;
    private final List<Square> squares;
    private final List<KeptStop> kept;
    private final List<PlanDay> days;
    private final HeldTurns held;
    private final BitSet usable = new BitSet();
    private final PlanProblem problem;

    private EventProblem(Outlook outlook, Replan replan, List<Ban> newBans, Bans bans) {
        this.outlook = outlook;
        this.replan = replan;
        this.newBans = newBans;
        this.bans = bans;
        Event event = outlook.event();
        clock = ProblemClock.from(outlook.span().start());
        sites = List.copyOf(event.getSites());
        birds = List.copyOf(event.getBirds());
        teams = List.copyOf(event.getTeams());
        squares = List.copyOf(squares(outlook));
        kept = KeptStop.of(event, replan.from()).stream()
                .filter(stop -> sites.contains(stop.site()) && teams.contains(stop.team()))
                .map(stop -> stop.cutBy(bans, replan.from(), outlook.policies().takeDown())).toList();
        IntStream.range(0, sites.size()).filter(site -> SiteUse.whyNot(outlook, sites.get(site)).isEmpty()).forEach(usable::set);
        PolicyFigures policies = outlook.policies();
        StationTimes times = new StationTimes(EventChances.clockSeconds(policies.setUp()),
                EventChances.clockSeconds(policies.takeDown()), EventChances.clockSeconds(policies.turnGap()));
        Places places = new Places(outlook);
        days = EventDays.of(outlook, bans, clock, places, kept, replan.from());
        List<Chance> chances = new ArrayList<>(
                EventChances.of(outlook, bans, clock, times, days, sites, usable, birds));
        held = new HeldTurns(this);
        Commitments commitments = commitments(chances);
        problem = new PlanProblem(
                sites.stream().map(site -> outlook.squares(site).stream().map(squares::indexOf).toList()).toList(),
                squares.stream().map(outlook::demand).toList(),
                new Tiers(policies.repeatWorths()),
                birds.stream().map(bird -> bird.getAccess() == Access.PASSBAND ? TEAMS_IN_A_PASSBAND : 1).toList(),
                days, chances,
                kept.stream().map(stop -> fixed(stop, days)).toList(),
                places.roads(), times, DRIVING_PRICE_PER_HOUR,
                EventBans.of(bans, clock, teams, sites, birds, days),
                commitments);
    }

    /** A plan from nothing but what is pinned. */
    static EventProblem of(Outlook outlook) {
        return of(outlook, Replan.NONE);
    }

    static EventProblem of(Outlook outlook, Replan replan) {
        List<Ban> newBans = replan.whatIfs().stream().map(WhatIf::ban).toList();
        return new EventProblem(outlook, replan, newBans, Bans.of(outlook.event()).and(newBans));
    }

    /** The same if nothing were banned. */
    EventProblem withoutBans() {
        return new EventProblem(outlook, replan, List.of(), Bans.NONE);
    }

    /** What is to be held on to becomes a chance of its day, as it is, if it can be worked. */
    private Commitments commitments(List<Chance> chances) {
        if (replan.keeping() == 0) {
            return Commitments.NONE;
        }
        List<Commitment> commitments = held.all().stream().flatMap(turn -> turn.ways().stream()).toList();
        Set<Chance> known = new HashSet<>(chances);
        commitments.stream().map(Commitment::chance).filter(known::add).forEach(chances::add);
        return new Commitments(commitments);
    }

    /**
     * The part of a turn that can be worked; empty when that is too short, unless the turn was as short itself.
     *
     * @param whole    the stop that it lies in, which says which day it belongs to
     * @param shortest how long the turn was at least
     */
    Optional<Commitment> commitment(Team team, Window whole, Site site, Bird bird, Window planned, Duration shortest,
            double worth) {
        int day = day(team, whole, days);
        int number = sites.indexOf(site);
        if (day == FixedStay.NO_DAY || number < 0 || !usable.get(number) || !birds.contains(bird)) {
            return Optional.empty();
        }
        int least = (int) Math.min(shortest.toSeconds(),
                Math.max(1, EventChances.clockSeconds(outlook.policies().minimumTurn())));
        return outlook.passes(site, bird).stream()
                .flatMap(pass -> EventChances.workable(outlook, bans, pass).stream())
                .flatMap(part -> part.intersection(planned).stream())
                .filter(part -> clock.floor(part.end()) - clock.ceiling(part.start()) >= least)
                .max(Comparator.comparing(Window::duration))
                .map(part -> new Commitment(day, new Chance(number, birds.indexOf(bird), clock.ceiling(part.start()),
                        clock.floor(part.end())), worth));
    }

    /** The turns that a new plan should hold on to, whether it can or not. */
    HeldTurns held() {
        return held;
    }

    /** What forbids a turn, with the time to set up and take down; empty when nothing does. */
    Optional<String> whyBanned(Team team, Site site, Bird bird, Window window) {
        Window station = new Window(window.start().minus(outlook.policies().setUp()),
                window.end().plus(outlook.policies().takeDown()));
        return Stream.concat(bans.onTurn(team, site, bird, window).stream(), bans.onStop(team, site, station).stream())
                .findFirst().map(Words::of);
    }

    /** What is left to say of a turn that nobody works and that nothing forbids. */
    static String whyNotWorked(boolean canBeWorked) {
        return canBeWorked ? "the team cannot be there then without giving up what is worth more"
                : "it cannot be worked then any more";
    }

    /** Everything that is banned, what-ifs included. */
    Bans bans() {
        return bans;
    }

    /** Those that come with the what-ifs. */
    List<Ban> newBans() {
        return newBans;
    }

    Replan replan() {
        return replan;
    }

    Outlook outlook() {
        return outlook;
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

    /** Sites that claim a square, whether they may be used or not. */
    List<Site> sites(int square) {
        return sites.stream().filter(site -> outlook.squares(site).contains(squares.get(square))).toList();
    }

    /** Whether a pass may be worked by some team's day, as far as time goes. */
    boolean isOut(SitePass pass) {
        return problem.days().stream().anyMatch(day -> clock.window(day.from(), day.until()).overlaps(pass.pass().window()));
    }

    /** Whether a ban, in its period, keeps some team from a site or from a bird there. */
    boolean forbidsSomethingAt(Ban ban, Site site) {
        return teams.stream().anyMatch(team -> Bans.forbidsStop(ban, team, site)
                || birds.stream().anyMatch(bird -> Bans.forbidsTurn(ban, team, site, bird)));
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

    private FixedStay fixed(KeptStop stop, List<PlanDay> days) {
        int site = sites.indexOf(stop.site());
        int arrival = clock.floor(stop.window().start());
        int departure = clock.ceiling(stop.window().end());
        List<Chance> turns = stop.turns().stream().filter(turn -> birds.contains(turn.turn().getBird()))
                .map(turn -> fixedTurn(site, birds.indexOf(turn.turn().getBird()), turn.window()))
                .sorted(Comparator.comparingInt(Chance::start)).toList();
        return new FixedStay(day(stop.team(), stop.window(), days), site, arrival, departure, turns);
    }

    /** The day of a team that shares most of a window. */
    private int day(Team team, Window window, List<PlanDay> days) {
        int best = FixedStay.NO_DAY;
        int longest = 0;
        for (int day = 0; day < days.size(); day++) {
            int shared = Math.min(clock.ceiling(window.end()), days.get(day).until())
                    - Math.max(clock.floor(window.start()), days.get(day).from());
            if (days.get(day).team() == teams.indexOf(team) && shared > longest) {
                longest = shared;
                best = day;
            }
        }
        return best;
    }

    private Chance fixedTurn(int site, int bird, Window window) {
        int start = clock.floor(window.start());
        return new Chance(site, bird, start, Math.max(start + 1, clock.ceiling(window.end())));
    }
}
