package org.straddle.daysheet.sheet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.FindingsByThing;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** One reading of an event into a sheet. */
final class SheetReading {

    /** A slip in a year must not stretch the sheet over centuries. */
    private static final int LONGEST_DAYS = 62;

    private final Outlook outlook;
    private final Event event;
    private final FindingsByThing findings;
    private final LightMemory light;
    private final Map<Bird, BirdMark> birds;
    private int untimed;

    SheetReading(Outlook outlook, List<Finding> findings, LightMemory light) {
        this.outlook = outlook;
        this.event = outlook.event();
        this.findings = FindingsByThing.of(findings);
        this.light = light;
        this.birds = BirdMark.all(event.getBirds());
    }

    Optional<DaySheet> read() {
        List<Window> times = near(times());
        Optional<Instant> first = times.stream().map(Window::start).min(Comparator.naturalOrder());
        if (first.isEmpty()) {
            return Optional.empty();
        }
        List<SheetDay> days = days(first.get(), times);
        Window range = new Window(days.get(0).window().start(), days.get(days.size() - 1).window().end());
        List<Lane> lanes = new ArrayList<>();
        event.getTeams().stream().sorted(Comparator.comparingInt(Team::getNumber))
                .forEach(team -> lanes.add(lane(Optional.of(team), days)));
        if (stops().stream().anyMatch(stop -> stop.getTeam() == null && isOn(days, stop))) {
            lanes.add(lane(Optional.empty(), days));
        }
        untimed += (int) stops().stream().filter(stop -> !isOn(days, stop)).count();
        return Optional.of(new DaySheet(event, outlook.zone(), range, around(times, range).orElse(range), days,
                List.copyOf(lanes), birds, untimed));
    }

    static Optional<Window> window(Instant from, Instant until) {
        return from == null || until == null || !from.isBefore(until) ? Optional.empty()
                : Optional.of(new Window(from, until));
    }

    /** The shortest window that holds both. */
    static Window hull(Window a, Window b) {
        return new Window(a.start().isBefore(b.start()) ? a.start() : b.start(),
                a.end().isAfter(b.end()) ? a.end() : b.end());
    }

    private Lane lane(Optional<Team> team, List<SheetDay> days) {
        LaneReading reading = new LaneReading(outlook, findings, light, birds, days);
        Lane lane = reading.read(team, stops().stream()
                .filter(stop -> stop.getTeam() == team.orElse(null) && isOn(days, stop)).toList());
        untimed += reading.untimedTurns();
        return lane;
    }

    private static boolean isOn(List<SheetDay> days, Stop stop) {
        return window(stop).filter(window -> days.stream().anyMatch(day -> day.window().overlaps(window))).isPresent();
    }

    /** All times, or what of them lies in the event when one is so long or so far from the others that it must be a slip. */
    private List<Window> near(List<Window> times) {
        Optional<Window> whole = times.stream().reduce(SheetReading::hull);
        if (whole.filter(window -> window.duration().toDays() >= LONGEST_DAYS).isEmpty() || !outlook.hasSpan()) {
            return times;
        }
        return times.stream().flatMap(time -> time.intersection(outlook.span()).stream()).toList();
    }

    private List<Stop> stops() {
        return event.getPlan() == null ? List.of() : event.getPlan().getStops();
    }

    private static Optional<Window> window(Stop stop) {
        return window(stop.getArrival(), stop.getDeparture());
    }

    private List<Window> times() {
        Stream<Optional<Window>> out = event.getTeams().stream().flatMap(team -> team.getDays().stream())
                .map((TeamDay day) -> window(day.getFrom(), day.getUntil()));
        Stream<Optional<Window>> stays = stops().stream().map(SheetReading::window);
        Stream<Optional<Window>> work = stops().stream().filter(stop -> window(stop).isPresent())
                .flatMap(stop -> stop.getTurns().stream()).map((Turn turn) -> window(turn.getStart(), turn.getEnd()));
        return Stream.of(out, stays, work).flatMap(all -> all).flatMap(Optional::stream).toList();
    }

    private List<SheetDay> days(Instant first, List<Window> times) {
        Instant last = times.stream().map(Window::end).max(Comparator.naturalOrder()).orElseThrow();
        List<SheetDay> days = new ArrayList<>();
        LocalDate date = first.atZone(outlook.zone()).toLocalDate();
        do {
            Window whole = new Window(midnight(date), midnight(date.plusDays(1)));
            days.add(new SheetDay(days.size() + 1, date, whole, around(times, whole).orElse(whole)));
            date = date.plusDays(1);
        } while (midnight(date).isBefore(last) && days.size() < LONGEST_DAYS);
        return List.copyOf(days);
    }

    private Instant midnight(LocalDate date) {
        return date.atStartOfDay(outlook.zone()).toInstant();
    }

    private static Optional<Window> around(List<Window> times, Window within) {
        return times.stream().flatMap(window -> window.intersection(within).stream()).reduce(SheetReading::hull);
    }
}
