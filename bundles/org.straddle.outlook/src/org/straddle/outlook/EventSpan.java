package org.straddle.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.TeamDay;
import org.straddle.sky.Window;

/**
 * The time an event takes: from the first team's leaving to the last team's return, or the local days
 * of the event when no team has a day yet.
 */
final class EventSpan {

    /** A slip in a year must not lead to a search through centuries. */
    static final Duration LONGEST = Duration.ofDays(62);

    private EventSpan() {
    }

    /** Empty when the event has neither team days nor days of its own. */
    static Optional<Window> of(Event event, ZoneId zone) {
        Optional<Instant> first = days(event).map(TeamDay::getFrom).min(Instant::compareTo);
        Optional<Instant> last = days(event).map(TeamDay::getUntil).max(Instant::compareTo);
        if (first.isPresent()) {
            return Optional.of(new Window(first.get(), last.get()));
        }
        LocalDate firstDay = event.getFirstDay();
        LocalDate lastDay = event.getLastDay() == null ? firstDay : event.getLastDay();
        if (firstDay == null || lastDay.isBefore(firstDay)) {
            return Optional.empty();
        }
        return Optional.of(new Window(firstDay.atStartOfDay(zone).toInstant(),
                lastDay.plusDays(1).atStartOfDay(zone).toInstant()));
    }

    /** Days that end after they begin; others are left to the checks. */
    private static Stream<TeamDay> days(Event event) {
        return event.getTeams().stream().flatMap(team -> team.getDays().stream())
                .filter(day -> day.getFrom() != null && day.getUntil() != null
                        && day.getFrom().isBefore(day.getUntil()));
    }
}
