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

import org.straddle.daysheet.edit.PlaceStop;
import org.straddle.model.Ban;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Bans;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Company;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TeamDays;
import org.straddle.outlook.itinerary.Wheel;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * Tries a stop at other times and with other teams, without changing anything: says which rules would be broken there.
 * It reads the rest of the plan as the rules do.
 *
 * <p>What is wrong wherever the stop is (a refused site, a turn below the horizon) counts for nothing here.
 */
final class StopTrial {

    private static final Catalogue TEXTS = Catalogue.of(StopTrial.class);

    private final Outlook outlook;
    private final Itinerary plan;
    private final Stop stop;
    private final Site site;
    private final Bans bans;
    private final List<Stay> others;
    private final Set<Set<String>> tooLongNow;

    /** @param stop of the outlook's event; it has a site */
    StopTrial(Outlook outlook, Itinerary plan, Stop stop) {
        this.outlook = outlook;
        this.plan = plan;
        this.stop = stop;
        this.site = stop.getSite();
        this.bans = Bans.of(outlook.event());
        this.others = plan.stays().stream().filter(stay -> stay.stop() != stop).toList();
        this.tooLongNow = new HashSet<>();
        Drives.of(outlook, plan).stream().filter(Wheel::isTooLong).forEach(drive -> tooLongNow.add(ends(drive)));
    }

    List<Obstacle> at(Team team, Window window) {
        List<Obstacle> obstacles = new ArrayList<>();
        Stay stay = stay(team, window);
        day(team, window, obstacles);
        neighbours(stay, obstacles);
        drives(stay, obstacles);
        turns(stay, obstacles);
        if (team != stop.getTeam()) {
            newCompany(stay, obstacles);
        }
        for (Ban ban : bans.onStop(team, site, window)) {
            obstacles.add(banned(ban));
        }
        return obstacles;
    }

    /** What speaks against a place, though it fits. */
    List<String> cares(Team team, Window window) {
        Stay stay = stay(team, window);
        return Cares.of(outlook, stay, Stream.concat(others(team), Stream.of(stay)).toList()).stream().map(Cares.Care::sentence)
                .toList();
    }

    /** Moments at which it may begin or cease to be right to arrive. */
    Collection<Instant> arrivals(Team team) {
        Set<Instant> points = edges(team);
        others(team).forEach(stay -> drive(stay.site(), site)
                .ifPresent(drive -> points.add(stay.window().end().plus(drive))));
        days(team).forEach(day -> drive(day.getStart(), site).ifPresent(drive -> points.add(day.getFrom().plus(drive))));
        timedTurns().forEach(turn -> points.add(turn.getStart().minus(outlook.policies().setUp())));
        return points;
    }

    /** Moments at which it may begin or cease to be right to leave. */
    Collection<Instant> departures(Team team) {
        Set<Instant> points = edges(team);
        others(team).forEach(stay -> drive(site, stay.site())
                .ifPresent(drive -> points.add(stay.window().start().minus(drive))));
        days(team).forEach(day -> drive(site, day.getEnd()).ifPresent(drive -> points.add(day.getUntil().minus(drive))));
        timedTurns().forEach(turn -> points.add(turn.getEnd().plus(outlook.policies().takeDown())));
        return points;
    }

    /** Where all begins and ends that a place could be at odds with. */
    private Set<Instant> edges(Team team) {
        Set<Instant> points = new HashSet<>();
        others.stream().filter(stay -> stay.team() == team || competes(stay)).forEach(stay -> {
            points.add(stay.window().start());
            points.add(stay.window().end());
        });
        days(team).forEach(day -> {
            points.add(day.getFrom());
            points.add(day.getUntil());
        });
        timedTurns().forEach(turn -> {
            points.add(turn.getStart());
            points.add(turn.getEnd());
        });
        bans.all().forEach(ban -> Stream.of(Optional.ofNullable(ban.getFrom()), Optional.ofNullable(ban.getUntil()))
                .flatMap(Optional::stream).forEach(points::add));
        return points;
    }

    private boolean competes(Stay stay) {
        return Company.compete(outlook, stay.site(), site);
    }

    private Stream<Stay> others(Team team) {
        return others.stream().filter(stay -> stay.team() == team);
    }

    private static Stream<TeamDay> days(Team team) {
        return team.getDays().stream().filter(day -> TeamDays.window(day).isPresent());
    }

    private Stream<Turn> timedTurns() {
        return stop.getTurns().stream().filter(turn -> Itinerary.window(turn.getStart(), turn.getEnd()).isPresent());
    }

    private Optional<Duration> drive(Identified from, Identified to) {
        return outlook.road(from, to).map(drive -> drive.total());
    }

    private Stay stay(Team team, Window window) {
        List<Turn> leaving = PlaceStop.leaving(stop, window);
        List<Work> works = stop.getTurns().stream().filter(turn -> turn.getBird() != null && !leaving.contains(turn))
                .flatMap(turn -> Itinerary.window(turn.getStart(), turn.getEnd()).stream()
                        .map(time -> new Work(turn, stop, team, site, turn.getBird(), time))).toList();
        return new Stay(stop, team, site, window, works);
    }

    private static void day(Team team, Window window, List<Obstacle> obstacles) {
        if (!TeamDays.hold(team, window)) {
            obstacles.add(new Obstacle(PlanRule.STOP_OUTSIDE_DAY, TeamDays.of(team).stream().filter(window::overlaps)
                    .findFirst()
                    .map(day -> TEXTS.text("day.only", "team", Say.team(team), "times", Say.during(day)))
                    .orElse(TEXTS.text("day.not", "team", Say.team(team)))));
        }
    }

    private void neighbours(Stay stay, List<Obstacle> obstacles) {
        for (Stay other : others) {
            Company.broken(outlook, stay, other).ifPresent(rule -> obstacles.add(new Obstacle(rule, switch (rule) {
                case STOPS_OVERLAP -> TEXTS.text("company.elsewhere", "team", Say.team(stay.team()),
                        "site", Naming.name(other.site()), "times", Say.during(other.window()));
                case SAME_SITE -> TEXTS.text("company.here", "team", Say.team(other.team()),
                        "times", Say.during(other.window()));
                default -> TEXTS.text("company.square", "team", Say.team(other.team()),
                        "site", Naming.name(other.site()), "square", Company.common(outlook, site, other.site()).first(),
                        "times", Say.during(other.window()));
            })));
        }
    }

    private void drives(Stay stay, List<Obstacle> obstacles) {
        List<Stay> lane = new ArrayList<>(others(stay.team()).toList());
        lane.add(stay);
        List<Drive> drives = drives(stay.team(), lane);
        tellTooLong(drives, obstacles);
        tellLimit(stay, drives, obstacles);
        Team before = stop.getTeam();
        if (before != null && before != stay.team()) {
            tellTooLong(drives(before, others(before).toList()), obstacles);
        }
    }

    private List<Drive> drives(Team team, List<Stay> lane) {
        return Drives.of(team, outlook,
                lane.stream().sorted((a, b) -> Window.IN_TIME_ORDER.compare(a.window(), b.window())).toList());
    }

    /** Also of drives past the gap that the stop left: with fewer stops there may be a longer way. */
    private void tellTooLong(List<Drive> drives, List<Obstacle> obstacles) {
        for (Drive drive : drives) {
            if (Wheel.isTooLong(drive) && (ends(drive).contains(stop.getId()) || !tooLongNow.contains(ends(drive)))) {
                obstacles.add(new Obstacle(PlanRule.DRIVE_TOO_LONG, TEXTS.text("drive.room",
                        "from", Naming.name(drive.from()), "to", Naming.name(drive.to()),
                        "need", Say.need(drive.road().total()), "have", Say.have(drive.time()))));
            }
        }
    }

    /** On the day of the stop. */
    private void tellLimit(Stay stay, List<Drive> drives, List<Obstacle> obstacles) {
        drives.stream().filter(drive -> ends(drive).contains(stop.getId())).flatMap(drive -> drive.day().stream())
                .distinct().forEach(day -> {
                    Duration driving = Wheel.driving(drives, day);
                    DrivingLaw law = Wheel.law(outlook, drives, day);
                    if (Wheel.isOverLimit(driving, law)) {
                        obstacles.add(new Obstacle(PlanRule.DRIVING_LIMIT, TEXTS.text("drive.limit",
                                "team", Say.team(stay.team()), "need", Say.need(driving), "have", Say.have(law.limit()),
                                "whose", law.limitOf().isPresent() ? "country" : "event",
                                "country", law.limitOf().map(Naming::name).orElse(""))));
                    }
                });
    }

    /** The stops at the ends of a drive. */
    private static Set<String> ends(Drive drive) {
        Set<String> ends = new HashSet<>();
        drive.before().ifPresent(stay -> ends.add(stay.stop().getId()));
        drive.after().ifPresent(stay -> ends.add(stay.stop().getId()));
        return ends;
    }

    private void turns(Stay stay, List<Obstacle> obstacles) {
        for (Work work : stay.turns()) {
            StationTime.obstacles(outlook, stay.window(), work.window()).stream()
                    .map(found -> new Obstacle(found.rule(), TEXTS.text("turn.found",
                            "bird", Naming.name(work.bird()), "time", TimeText.zulu(work.window().start()),
                            "found", found.sentence())))
                    .forEach(obstacles::add);
        }
    }

    /** What stop and turns meet with a new team that they did not meet with the one before. */
    private void newCompany(Stay stay, List<Obstacle> obstacles) {
        CrewLimits.onStops(outlook, stay.team()).ifPresent(obstacles::add);
        for (Work work : stay.turns()) {
            obstacles.addAll(CrewLimits.onTurns(outlook, stay.team(), site, work.bird()));
            for (Work other : others.stream().flatMap(o -> o.turns().stream()).toList()) {
                Meeting.gap(outlook, work, other).ifPresent(obstacles::add);
                if (stop.getTeam() == null || other.team() == stop.getTeam()) {
                    Meeting.channel(outlook, work, other).ifPresent(obstacles::add);
                    Meeting.frequency(outlook, work, other).ifPresent(obstacles::add);
                }
            }
            bans.onTurn(stay.team(), site, work.bird(), work.window()).stream().filter(ban -> ban.getBird() != null)
                    .forEach(ban -> obstacles.add(banned(ban)));
        }
    }

    static Obstacle banned(Ban ban) {
        String reason = ban.getReason() == null || ban.getReason().isBlank() ? "" : ban.getReason().strip();
        return new Obstacle(PlanRule.BAN_BROKEN, TEXTS.text("ban", "given", !reason.isEmpty(), "reason", reason));
    }
}
