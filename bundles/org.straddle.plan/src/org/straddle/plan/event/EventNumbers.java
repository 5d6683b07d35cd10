package org.straddle.plan.event;

import java.time.Duration;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.straddle.grid.Square;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Bans;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.TurnGap;
import org.straddle.plan.Replan;
import org.straddle.plan.SiteUse;
import org.straddle.plan.WhatIf;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.Commitment;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.Service;
import org.straddle.plan.problem.StationTimes;
import org.straddle.plan.problem.Wants;
import org.straddle.sky.Window;
import org.straddle.worth.EventWorth;
import org.straddle.worth.TurnChance;

/**
 * The things of an event by number, as a problem counts them: sites, birds, teams, squares, and the days of the teams
 * that are still to be planned. Which sites may be used, what is banned and what stays as it is is settled here.
 *
 * @param worth    what turns are worth
 * @param newBans  those that come with the what-ifs; {@code bans} has them too
 * @param crews    what teams may not do because of who is in them
 * @param squares  those that sites claim or that somebody needs
 * @param kept     stops that stay as they are
 * @param usable   numbers of the sites where teams may work
 * @param places   sites, bases and points on the road
 * @param hours    when teams are on duty and eat
 */
record EventNumbers(Outlook outlook, EventWorth worth, Replan replan, List<Ban> newBans, Bans bans, CrewLimits crews,
        ProblemClock clock, List<Site> sites, List<Bird> birds, List<Team> teams, List<Square> squares, List<KeptStop> kept, BitSet usable, Places places,
        DutyHours hours, List<PlanDay> days) {

    /** With the bans of the event and of the what-ifs. */
    static EventNumbers of(Outlook outlook, Replan replan) {
        List<Ban> newBans = replan.whatIfs().stream().map(WhatIf::ban).toList();
        return of(outlook, EventWorth.of(outlook), replan, newBans, Bans.of(outlook.event()).and(newBans), CrewLimits.of(outlook));
    }

    /** The same if nothing were banned, and every crew might do everything. */
    EventNumbers withoutLimits() {
        return of(outlook, worth, replan, List.of(), Bans.NONE, CrewLimits.NONE);
    }

    private static EventNumbers of(Outlook outlook, EventWorth worth, Replan replan, List<Ban> newBans, Bans bans,
            CrewLimits crews) {
        Event event = outlook.event();
        List<Site> sites = List.copyOf(event.getSites());
        List<Team> teams = List.copyOf(event.getTeams());
        ProblemClock clock = ProblemClock.from(outlook.span().start());
        List<KeptStop> kept = KeptStop.of(event, replan.from()).stream()
                .filter(stop -> sites.contains(stop.site()) && teams.contains(stop.team()))
                .map(stop -> stop.cutBy(bans, replan.from(), outlook.policies().takeDown())).toList();
        BitSet usable = new BitSet();
        IntStream.range(0, sites.size()).filter(site -> SiteUse.whyNot(outlook, sites.get(site)).isEmpty()).forEach(usable::set);
        Places places = new Places(outlook);
        DutyHours hours = new DutyHours(outlook, sites.stream().filter(site -> usable.get(sites.indexOf(site))).toList(),
                kept, replan);
        return new EventNumbers(outlook, worth, replan, newBans, bans, crews, clock, sites, List.copyOf(event.getBirds()), teams,
                List.copyOf(worth.wanted()), kept, usable, places, hours,
                List.copyOf(EventDays.of(outlook, bans, clock, places, hours, kept, replan.from())));
    }

    StationTimes times() {
        StationUp station = StationUp.of(outlook.policies());
        // The first turn of a stop begins with time in hand; the others come after it anyway.
        Duration untilFirst = station.setUp().plus(HoldFigures.of(outlook.event().getPolicies()).inHand());
        return new StationTimes(EventChances.clockSeconds(untilFirst), EventChances.clockSeconds(station.takeDown()),
                EventChances.clockSeconds(TurnGap.of(outlook.policies()).least()));
    }

    /** The squares that a site claims, by number. */
    List<Integer> squaresOf(Site site) {
        return outlook.squares(site).stream().map(squares::indexOf).toList();
    }

    FixedStay fixed(KeptStop stop) {
        int site = sites.indexOf(stop.site());
        int arrival = clock.floor(stop.window().start());
        int departure = clock.ceiling(stop.window().end());
        List<Chance> turns = stop.turns().stream().filter(turn -> birds.contains(turn.turn().getBird()))
                .map(turn -> fixedTurn(site, turn.turn().getBird(), turn.window()))
                .sorted(Comparator.comparingInt(Chance::start)).toList();
        return new FixedStay(day(stop.team(), stop.window()), site, arrival, departure, turns);
    }

    Chance fixedTurn(int site, Bird bird, Window window) {
        int start = clock.floor(window.start());
        return new Chance(site, birds.indexOf(bird), start, Math.max(start + 1, clock.ceiling(window.end())),
                service(worth.chance(sites.get(site), bird, window)));
    }

    /** What a turn is to the groups of chasers. */
    static Service service(TurnChance turn) {
        return Service.of(turn.probabilities());
    }

    Wants wants() {
        return new Wants(squares.stream().map(square -> worth.groups().stream()
                .mapToDouble(group -> group.needs().of(square)).toArray()).toArray(double[][]::new), worth.groups().size());
    }

    /** The day of a team that shares most of a window, or {@link FixedStay#NO_DAY}. */
    private int day(Team team, Window window) {
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

    /**
     * The part of a turn that can be worked; empty when that is too short, unless the turn was as short itself.
     *
     * @param whole    the stop that it lies in, which says which day it belongs to
     * @param shortest how long the turn was at least
     */
    Optional<Commitment> commitment(Team team, Window whole, Site site, Bird bird, Window planned, Duration shortest,
            double worthOfKeeping) {
        int day = day(team, whole);
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
                .map(part -> clock.window(clock.ceiling(part.start()), clock.floor(part.end())))
                .map(part -> new Commitment(day, new Chance(number, birds.indexOf(bird), clock.floor(part.start()),
                        clock.floor(part.end()), service(worth.chance(site, bird, part))), worthOfKeeping));
    }
}
