package org.straddle.publish;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.straddle.grid.Square;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * Where the lines of the announcement come from, for the coordinator: at which site each turn is, how likely it is kept as
 * published, and how many chasers it is expected to serve. Chasers see none of this.
 *
 * @param summary how many turns are expected to be kept, and how many chasers are expected to be served
 */
public record SourceList(String event, String revision, String zone, String summary, List<Day> days) {

    private static final Catalogue TEXTS = Catalogue.of(SourceList.class);

    /** The turns of one local day, in order of time. */
    public record Day(String title, List<Entry> entries) {
    }

    /**
     * One turn.
     *
     * @param chance that it is kept as published, in words; empty when nobody can say
     * @param brings expected chasers served that the plan would lose without it, in words
     * @param weak   whether the chance is below what the event asks for
     */
    public record Entry(LocalDate date, Moment start, Moment end, String squares, String site, String bird, int team,
            String chance, String brings, boolean weak) {
    }

    public SourceList {
        days = List.copyOf(days);
    }

    static SourceList of(Outlook outlook, String revision, PlanHold hold) {
        Clock clock = new Clock(outlook.zone());
        List<Entry> entries = new ArrayList<>();
        for (Team team : outlook.event().getTeams()) {
            for (Stop stop : Scheduled.stops(outlook.event(), team)) {
                Scheduled.turns(stop).forEach(turn -> entries.add(entry(outlook, clock, team, stop, turn, hold)));
            }
        }
        entries.sort(Comparator.comparing((Entry entry) -> entry.start().instant()).thenComparing(Entry::team));
        Map<LocalDate, List<Entry>> byDay = entries.stream()
                .collect(Collectors.groupingBy(Entry::date, TreeMap::new, Collectors.toList()));
        return new SourceList(Line.of(outlook.event().getName(), TEXTS.text("announcement.unnamedEvent")), revision,
                clock.zoneName(), hold.summary(), byDay.entrySet().stream()
                        .map(day -> new Day(Clock.day(day.getKey()), day.getValue())).toList());
    }

    private static Entry entry(Outlook outlook, Clock clock, Team team, Stop stop, Turn turn, PlanHold hold) {
        LocalDate date = clock.localDate(turn.getStart());
        return new Entry(date, clock.minute(turn.getStart(), date), clock.minute(turn.getEnd(), date),
                outlook.squares(stop.getSite()).stream().map(Square::name).collect(Collectors.joining(" + ")),
                Line.of(stop.getSite().getName()), Line.of(turn.getBird().getName(), TEXTS.text("announcement.unnamedBird")),
                team.getNumber(), hold.percent(turn), hold.brings(turn), hold.isWeak(turn));
    }
}
