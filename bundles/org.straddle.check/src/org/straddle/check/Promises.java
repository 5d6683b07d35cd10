package org.straddle.check;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.straddle.check.rules.Itinerary;
import org.straddle.check.rules.Work;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Link;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;

/**
 * What an announcement promises to chasers: which squares are on which bird, when, on what frequency, and under which
 * call signs. Two states of a plan promise the same when these lines are equal; times count to the minute.
 *
 * @param lines one for each turn, in order of time
 * @param facts digest of the lines and of the words at the head of the announcement
 */
public record Promises(List<String> lines, String facts) {

    public Promises {
        lines = List.copyOf(lines);
    }

    /**
     * What differs from an earlier state.
     *
     * @param dropped promised then and not now
     * @param added   promised now and not then
     */
    public record Change(List<String> dropped, List<String> added) {

        public boolean isNothing() {
            return dropped.isEmpty() && added.isEmpty();
        }
    }

    public static Promises of(Outlook outlook) {
        Event event = outlook.event();
        List<String> lines = Itinerary.of(event).turns().stream().map(work -> line(work, outlook)).toList();
        String teams = event.getTeams().stream().map(Promises::signs).collect(Collectors.joining("\n"));
        return new Promises(lines, Digest.of(String.join("\n", lines), event.getName(), event.getClub(),
                event.getFirstDay(), event.getLastDay(), outlook.zone(), event.getAnnouncementText(), teams));
    }

    /** @param before the lines of an earlier state */
    public Change since(List<String> before) {
        List<String> dropped = new ArrayList<>(before);
        lines.forEach(dropped::remove);
        List<String> added = new ArrayList<>(lines);
        before.forEach(added::remove);
        return new Change(List.copyOf(dropped), List.copyOf(added));
    }

    /** {@code 2031-06-21 10:20–10:30 UTC HP94+IP04 Tern-1 (demo) 145.950 MHz, team 1}. */
    private static String line(Work work, Outlook outlook) {
        Instant start = minute(work.window().start());
        Instant end = minute(work.window().end());
        String squares = outlook.squares(work.site()).stream().map(Square::name).collect(Collectors.joining("+"));
        return start.toString().substring(0, 10) + " " + start.toString().substring(11, 16) + "–"
                + end.toString().substring(11, 16) + " UTC " + (squares.isEmpty() ? "no square" : squares) + " "
                + text(work.bird().getName()) + " " + frequency(work) + ", team " + work.team().getNumber();
    }

    private static String frequency(Work work) {
        if (work.turn().getDownlinkMhz() > 0) {
            return work.turn().getDownlinkMhz() + " MHz";
        }
        Bird bird = work.bird();
        Link down = bird.getDownlink();
        return bird.getMode().getLiteral() + (down == null ? "" : " " + down.getLowMhz()
                + (down.getHighMhz() > down.getLowMhz() ? "–" + down.getHighMhz() : "") + " MHz");
    }

    private static String signs(Team team) {
        return team.getNumber() + " " + team.getOperators().stream().filter(operator -> !operator.eIsProxy())
                .map(Operator::getCallSign).map(Promises::text).collect(Collectors.joining(" "));
    }

    private static Instant minute(Instant instant) {
        return instant.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
    }

    private static String text(String text) {
        return text == null ? "" : text.strip();
    }
}
