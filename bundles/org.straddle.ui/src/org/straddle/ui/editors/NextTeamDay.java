package org.straddle.ui.editors;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;

/**
 * What a new day of a team starts from: the day after its last one, at the same local hours and from the base where that
 * one ends; or the first day of the event.
 */
final class NextTeamDay {

    private static final LocalTime MORNING = LocalTime.of(8, 0);
    private static final LocalTime EVENING = LocalTime.of(20, 0);

    private NextTeamDay() {
    }

    static TeamDay of(Team team, Event event) {
        ZoneId zone = Outlook.zoneOf(event);
        TeamDay day = StraddleFactory.eINSTANCE.createTeamDay();
        Optional<TeamDay> last = team.getDays().stream().filter(known -> known.getFrom() != null && known.getUntil() != null)
                .max(Comparator.comparing(TeamDay::getUntil));
        if (last.isPresent()) {
            day.setFrom(dayLater(last.get().getFrom(), zone));
            day.setUntil(dayLater(last.get().getUntil(), zone));
            day.setStart(last.get().getEnd());
            day.setEnd(last.get().getEnd());
        } else if (event.getFirstDay() != null) {
            day.setFrom(event.getFirstDay().atTime(MORNING).atZone(zone).toInstant());
            day.setUntil(event.getFirstDay().atTime(EVENING).atZone(zone).toInstant());
            if (event.getBases().size() == 1) {
                day.setStart(event.getBases().get(0));
                day.setEnd(event.getBases().get(0));
            }
        }
        return day;
    }

    private static Instant dayLater(Instant instant, ZoneId zone) {
        return instant.atZone(zone).plusDays(1).toInstant();
    }
}
