package org.straddle.publish;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.check.Promise;
import org.straddle.check.Promises;
import org.straddle.check.Severity;
import org.straddle.drawing.TeamMark;
import org.straddle.grid.Square;
import org.straddle.model.Event;
import org.straddle.model.Revision;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.words.Catalogue;

/**
 * What chasers see: when which squares can be worked through which bird. It says nothing of people but call signs,
 * and nothing of places but squares, because anybody may read it.
 *
 * @param draft whether the plan still has an open blocker: the sheet says so at its head
 * @param changes what differs from the revision before
 * @param days the schedule in order of time, by local day
 * @param squares the same by square, in the alphabet
 */
public record Announcement(String event, String club, String dates, String zone, List<String> text, String revision,
        boolean draft, List<TeamHead> teams, Changes changes, List<Day> days, List<SquareEntry> squares) {

    private static final Catalogue TEXTS = Catalogue.of(Announcement.class);

    /**
     * What chasers of an earlier revision have to know.
     *
     * @param since   number of that revision; 0 when there is none
     * @param dropped lines that it promised and this one does not
     * @param added   lines that are new, or stand in place of dropped ones
     * @param retuned birds whose turns stay and whose frequency is another
     */
    public record Changes(int since, List<String> dropped, List<String> added, List<String> retuned) {

        static final Changes NONE = new Changes(0, List.of(), List.of(), List.of());

        public boolean isNothing() {
            return dropped.isEmpty() && added.isEmpty() && retuned.isEmpty();
        }

        /** Since the last revision before a number; none when what that one promised is not known. */
        static Changes before(int number, Outlook outlook) {
            return Promises.lastBefore(number, outlook.event()).filter(last -> !last.getPromises().isEmpty())
                    .map(last -> since(last, Promises.of(outlook).since(Promises.of(last)))).orElse(NONE);
        }

        private static Changes since(Revision last, Promises.Change change) {
            return new Changes(last.getNumber(), change.dropped().stream().map(Promise::line).toList(),
                    change.added().stream().map(Promise::line).toList(),
                    change.retuned().stream().map(retuned -> TEXTS.text("announcement.retuned", "bird", retuned.bird(),
                            "before", retuned.before(), "now", retuned.now(), "turns", retuned.turns())).toList());
        }
    }

    /** The turns of one local day. */
    public record Day(String title, List<Entry> entries) {
    }

    /** One turn. */
    public record Entry(LocalDate date, Moment start, Moment end, String squares, String kind, String bird,
            String mode, String downlink, TeamMark team) {
    }

    /** All turns from one square. */
    public record SquareEntry(String square, List<Entry> entries) {
    }

    public Announcement {
        text = List.copyOf(text);
        teams = List.copyOf(teams);
        days = List.copyOf(days);
        squares = List.copyOf(squares);
    }

    /** Whether the plan has no turn at all. */
    public boolean isEmpty() {
        return days.isEmpty();
    }

    static Announcement of(Outlook outlook, List<Finding> findings, int number, String revision) {
        Event event = outlook.event();
        Clock clock = new Clock(outlook.zone());
        List<Row> rows = rows(outlook, clock);
        Map<LocalDate, List<Entry>> byDay = rows.stream().collect(Collectors.groupingBy(row -> row.entry.date(),
                TreeMap::new, Collectors.mapping(Row::entry, Collectors.toList())));
        Map<Square, List<Entry>> bySquare = new TreeMap<>();
        rows.forEach(row -> row.squares.forEach(
                square -> bySquare.computeIfAbsent(square, any -> new ArrayList<>()).add(row.entry)));
        boolean draft = findings.stream().anyMatch(f -> f.severity() == Severity.BLOCKER && f.accepted().isEmpty());
        return new Announcement(Line.of(event.getName(), TEXTS.text("announcement.unnamedEvent")), Line.of(event.getClub()), dates(event),
                clock.zoneName(), Line.paragraphs(event.getAnnouncementText()), revision, draft,
                event.getTeams().stream().map(TeamHead::of).toList(), Changes.before(number, outlook),
                byDay.entrySet().stream().map(day -> new Day(Clock.day(day.getKey()), day.getValue())).toList(),
                bySquare.entrySet().stream().map(s -> new SquareEntry(s.getKey().name(), s.getValue())).toList());
    }

    private record Row(Entry entry, List<Square> squares) {
    }

    private static List<Row> rows(Outlook outlook, Clock clock) {
        List<Row> rows = new ArrayList<>();
        for (Team team : outlook.event().getTeams()) {
            for (Stop stop : Scheduled.stops(outlook.event(), team)) {
                for (Turn turn : Scheduled.turns(stop)) {
                    rows.add(row(outlook, clock, team, stop, turn));
                }
            }
        }
        rows.sort(Comparator.comparing((Row row) -> row.entry.start().instant())
                .thenComparing(row -> row.entry.team().number()));
        return rows;
    }

    private static Row row(Outlook outlook, Clock clock, Team team, Stop stop, Turn turn) {
        Site site = stop.getSite();
        LocalDate date = clock.localDate(turn.getStart());
        Duration error = BriefTurn.error(Scheduled.pass(outlook, stop, turn).map(SitePass::pass));
        // A chaser needs no seconds.
        Duration coarse = error.compareTo(Duration.ofMinutes(1)) < 0 ? Duration.ofMinutes(1) : error;
        List<Square> squares = List.copyOf(outlook.squares(site));
        return new Row(new Entry(date, clock.moment(turn.getStart(), coarse, date),
                clock.moment(turn.getEnd(), coarse, date),
                squares.isEmpty() ? TEXTS.text("announcement.notKnown") : squares.stream().map(Square::name).collect(Collectors.joining(" + ")),
                site.getKind().getLiteral(), Line.of(turn.getBird().getName(), TEXTS.text("announcement.unnamedBird")),
                BriefTurn.mode(turn.getBird()), Frequencies.downlink(turn), TeamMark.of(team.getNumber())), squares);
    }

    private static String dates(Event event) {
        if (event.getFirstDay() == null || event.getLastDay() == null) {
            return "";
        }
        return event.getFirstDay().equals(event.getLastDay()) ? Clock.day(event.getFirstDay())
                : TEXTS.text("announcement.to", "day", Clock.day(event.getFirstDay()),
                        "day2", Clock.day(event.getLastDay()));
    }
}
