package org.straddle.check;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Link;
import org.straddle.model.PublishedTurn;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * One line of an announcement: what chasers may rely on. It can be written down in the event and read back after the
 * turn that it was made from has changed or gone.
 *
 * @param start       to the minute, like the end
 * @param squares     names of those that count
 * @param bird        its name
 * @param frequency   mode or downlink, in words
 * @param downlinkMhz where the team answers, if that was agreed; 0 when it was not
 * @param team        its number
 */
public record Promise(Instant start, Instant end, List<String> squares, String birdId, String bird, String frequency,
        double downlinkMhz, String teamId, int team) {

    private static final Catalogue TEXTS = Catalogue.of(Promise.class);

    /** Instants within this much before a full minute, and less than this much after it, are announced as that minute. */
    private static final int HALF_A_MINUTE = 30;

    public Promise {
        squares = List.copyOf(squares);
    }

    /** What a turn of the plan promises. */
    public static Promise of(Work work, Outlook outlook) {
        return new Promise(minute(work.window().start()), minute(work.window().end()),
                outlook.squares(work.site()).stream().map(Square::name).toList(),
                work.bird().getId(), text(work.bird().getName()), frequency(work),
                work.turn().getDownlinkMhz(), work.team().getId(), work.team().getNumber());
    }

    /** Reads one back; empty when its times are missing or the wrong way round. */
    public static Optional<Promise> of(PublishedTurn turn) {
        return turn.getStart() == null || turn.getEnd() == null || turn.getEnd().isBefore(turn.getStart())
                ? Optional.empty()
                : Optional.of(new Promise(turn.getStart(), turn.getEnd(), turn.getSquares(), text(turn.getBirdId()),
                        text(turn.getBird()), text(turn.getFrequency()), turn.getDownlinkMhz(), text(turn.getTeamId()),
                        turn.getTeam()));
    }

    /** Writes it down. */
    public PublishedTurn written() {
        PublishedTurn turn = StraddleFactory.eINSTANCE.createPublishedTurn();
        turn.setStart(start);
        turn.setEnd(end);
        turn.getSquares().addAll(squares);
        turn.setBirdId(birdId);
        turn.setBird(bird);
        turn.setFrequency(frequency);
        turn.setDownlinkMhz(downlinkMhz);
        turn.setTeamId(teamId);
        turn.setTeam(team);
        return turn;
    }

    /** {@code 2031-06-21 10:20–10:30 UTC HP94+IP04 Tern-1 (demo) 145.950 MHz, team 1}. */
    public String line() {
        return TEXTS.text("promise.line", "day", start.toString().substring(0, 10), "from", clock(start), "until", clock(end),
                "squares", squares.isEmpty() ? TEXTS.text("promise.noSquare") : String.join("+", squares), "bird", bird,
                "frequency", frequency, "team", team);
    }

    /** Whether the other promises the same turn, to be heard elsewhere. */
    boolean differsInFrequency(Promise other) {
        return start.equals(other.start) && end.equals(other.end) && squares.equals(other.squares)
                && birdId.equals(other.birdId) && team == other.team && !frequency.equals(other.frequency);
    }

    /** Whether a turn is what was promised: that team on that bird, to the minute, from all squares that were promised. */
    public boolean isKeptBy(Team byTeam, Collection<Square> from, Bird onBird, Window at) {
        return onBird.getId().equals(birdId) && byTeam.getId().equals(teamId) && minute(at.start()).equals(start)
                && minute(at.end()).equals(end)
                && from.stream().map(Square::name).collect(Collectors.toSet()).containsAll(squares);
    }

    /** The longest time, in whole seconds, that would be announced with the same minutes. */
    public Window longest() {
        return new Window(start.minusSeconds(HALF_A_MINUTE), end.plusSeconds(HALF_A_MINUTE - 1));
    }

    /** Times, in whole seconds, that would be announced with the same minutes: from the longest to the shortest. */
    public List<Window> ways() {
        return Stream.of(longest(), new Window(start, end),
                new Window(start.plusSeconds(HALF_A_MINUTE - 1), end.minusSeconds(HALF_A_MINUTE)))
                .filter(way -> way.start().isBefore(way.end())).toList();
    }

    /** How long a turn is at least that is announced with these minutes. */
    public Duration shortest() {
        return Duration.ofSeconds(Math.max(1, Duration.between(start, end).minusMinutes(1).toSeconds() + 1));
    }

    private static String frequency(Work work) {
        if (work.turn().getDownlinkMhz() > 0) {
            return TEXTS.text("promise.downlink", "mhz", Double.toString(work.turn().getDownlinkMhz()));
        }
        Bird bird = work.bird();
        Link down = bird.getDownlink();
        String mode = Naming.of(bird.getMode());
        return down == null || !(down.getLowMhz() > 0) ? mode : TEXTS.text("promise.mode", "mode", mode, "mhz", down.getLowMhz()
                + (down.getHighMhz() > down.getLowMhz() ? "–" + down.getHighMhz() : ""));
    }

    private static Instant minute(Instant instant) {
        return instant.plusSeconds(HALF_A_MINUTE).truncatedTo(ChronoUnit.MINUTES);
    }

    private static String clock(Instant minute) {
        return minute.toString().substring(11, 16);
    }

    static String text(String text) {
        return text == null ? "" : text.strip();
    }
}
