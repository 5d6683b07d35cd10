package org.straddle.outlook.itinerary;

import java.util.List;
import java.util.Optional;

import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.sky.Window;

/** When a team is out. */
public final class TeamDays {

    private TeamDays() {
    }

    /** Empty for a day whose end is not after its start. */
    public static Optional<Window> window(TeamDay day) {
        return Itinerary.window(day.getFrom(), day.getUntil());
    }

    /** Its days that have usable times, in the order in which they were written down. */
    public static List<Window> of(Team team) {
        return team.getDays().stream().flatMap(day -> window(day).stream()).toList();
    }

    /** Whether a team may be at a stop then: within one of its days from arrival to departure. */
    public static boolean hold(Team team, Window stop) {
        return of(team).stream().anyMatch(day -> day.contains(stop));
    }
}
