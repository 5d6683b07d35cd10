package org.straddle.publish;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;

/**
 * What a team has on one local day.
 *
 * @param frame where and when the team is out; empty when the plan has stops on a day that the team does not have
 * @param stops by arrival
 */
record DaysOut(Optional<TeamDay> frame, List<Stop> stops) {

    /** By local date. A stop belongs to the day in whose hours it begins, also after midnight, else to its own date. */
    static Map<LocalDate, DaysOut> of(Team team, List<Stop> stops, Clock clock) {
        Map<LocalDate, DaysOut> days = new TreeMap<>();
        for (TeamDay day : team.getDays()) {
            if (day.getFrom() != null) {
                days.putIfAbsent(clock.localDate(day.getFrom()), new DaysOut(Optional.of(day), new ArrayList<>()));
            }
        }
        for (Stop stop : stops) {
            LocalDate date = team.getDays().stream().filter(day -> holds(day, stop)).findFirst()
                    .map(TeamDay::getFrom).map(clock::localDate).orElseGet(() -> clock.localDate(stop.getArrival()));
            days.computeIfAbsent(date, any -> new DaysOut(Optional.empty(), new ArrayList<>())).stops.add(stop);
        }
        return days;
    }

    private static boolean holds(TeamDay day, Stop stop) {
        return day.getFrom() != null && day.getUntil() != null && !stop.getArrival().isBefore(day.getFrom())
                && stop.getArrival().isBefore(day.getUntil());
    }
}
