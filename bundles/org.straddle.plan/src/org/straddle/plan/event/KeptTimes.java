package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Stop;
import org.straddle.outlook.HoldFigures;
import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;
import org.straddle.sky.Window;

/**
 * Gives stops that keep turns of an earlier plan the times back that they had, where road, bans and other teams allow.
 * The search makes every stay as short as it can; a team that was told when it arrives and leaves should not be told
 * anew for nothing.
 */
final class KeptTimes {

    private final EventProblem event;
    private final Roster roster;
    private final PlanProblem problem;
    private final int longest;

    private KeptTimes(EventProblem event, Roster roster) {
        this.event = event;
        this.roster = roster;
        problem = event.problem();
        longest = EventChances.clockSeconds(HoldFigures.of(event.outlook().event().getPolicies()).longestStop());
    }

    static void restore(EventProblem event, Roster roster) {
        KeptTimes times = new KeptTimes(event, roster);
        for (Stay stay : List.copyOf(roster.stays())) {
            if (stay.fixed().isEmpty()) {
                times.before(stay).ifPresent(planned -> times.restore(stay, planned));
            }
        }
    }

    /** When the stop was planned that most of the stay's turns were in. */
    private Optional<Window> before(Stay stay) {
        Map<Stop, Long> stops = new LinkedHashMap<>();
        for (HeldTurn held : event.held().all()) {
            if (held.turn().isPresent() && held.ways().stream()
                    .anyMatch(way -> way.day() == stay.day() && stay.turns().contains(way.chance()))) {
                stops.merge((Stop) held.turn().get().eContainer(), 1L, Long::sum);
            }
        }
        return stops.entrySet().stream().max(Map.Entry.comparingByValue())
                .flatMap(most -> KeptStop.of(most.getKey(), Optional.empty())).map(KeptStop::window);
    }

    private void restore(Stay stay, Window planned) {
        PlanDay day = problem.days().get(stay.day());
        List<Stay> others = new ArrayList<>(roster.day(stay.day()));
        others.remove(stay);
        Optional<Stay> previous = others.stream().filter(other -> other.departure() <= stay.arrival())
                .max(Comparator.comparingInt(Stay::departure));
        Optional<Stay> next = others.stream().filter(other -> other.arrival() >= stay.departure())
                .min(Comparator.comparingInt(Stay::arrival));
        int earliest = problem.arrival(stay.day(), previous.map(Stay::site).orElse(day.startPlace()),
                previous.map(Stay::departure).orElse(day.from()), stay.site());
        int latest = problem.departure(stay.day(), stay.site(), next.map(Stay::site).orElse(day.endPlace()),
                next.map(Stay::arrival).orElse(day.until()));
        // To whole minutes, and no longer at one stop than a team may be.
        int arrival = Math.max(Math.max(event.clock().floor(planned.start()), wholeMinute(earliest)), stay.departure() - longest);
        int departure = Math.min(Math.min(event.clock().ceiling(planned.end()), Math.floorDiv(latest, 60) * 60),
                Math.min(arrival, stay.arrival()) + longest);
        boolean sooner = arrival < stay.arrival() && isFree(stay, arrival, stay.arrival());
        boolean later = departure > stay.departure() && isFree(stay, stay.departure(), departure);
        if (sooner || later) {
            roster.remove(stay);
            roster.add(new Stay(stay.day(), stay.site(), sooner ? arrival : stay.arrival(),
                    later ? departure : stay.departure(), stay.turns(), Optional.empty()));
        }
    }

    private static int wholeMinute(int seconds) {
        return (seconds + 59) / 60 * 60;
    }

    private boolean isFree(Stay stay, int from, int until) {
        return problem.banned().before(stay.day(), stay.site(), from, until) != BannedTimes.BANNED
                && problem.squaresOfSite().get(stay.site()).stream().flatMap(square -> roster.holdsOf(square).stream())
                        .filter(other -> other != stay).noneMatch(other -> other.overlaps(from, until));
    }
}
