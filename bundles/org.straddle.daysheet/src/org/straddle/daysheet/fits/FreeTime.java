package org.straddle.daysheet.fits;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/**
 * Time of a team's day in which it is at no stop.
 *
 * @param window with the drives from where it was and to where it goes next
 * @param from   the site or base where it is before; empty when nobody entered a base
 * @param to     where it goes next
 */
public record FreeTime(Team team, Window window, Optional<Identified> from, Optional<Identified> to) {

    /** Of all days of a team of the outlook's event, by time. */
    public static List<FreeTime> of(Outlook outlook, Team team) {
        List<Stay> stays = Itinerary.of(outlook.event()).byTeam().getOrDefault(team, List.of());
        List<FreeTime> free = new ArrayList<>();
        team.getDays().forEach(day -> Itinerary.window(day.getFrom(), day.getUntil())
                .ifPresent(window -> add(team, day, window, stays, free)));
        free.sort((a, b) -> Window.IN_TIME_ORDER.compare(a.window, b.window));
        return List.copyOf(free);
    }

    private static void add(Team team, TeamDay day, Window window, List<Stay> stays, List<FreeTime> free) {
        Instant since = window.start();
        Optional<Identified> at = Optional.ofNullable(day.getStart());
        for (Stay stay : stays) {
            if (stay.window().overlaps(window)) {
                if (since.isBefore(stay.window().start())) {
                    free.add(new FreeTime(team, new Window(since, stay.window().start()), at, Optional.of(stay.site())));
                }
                if (since.isBefore(stay.window().end())) {
                    since = stay.window().end();
                    at = Optional.of(stay.site());
                }
            }
        }
        if (since.isBefore(window.end())) {
            free.add(new FreeTime(team, new Window(since, window.end()), at, Optional.ofNullable(day.getEnd())));
        }
    }
}
