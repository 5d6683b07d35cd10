package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Team;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/** Says in terms of the event what a roster says in numbers. */
final class ProposedStops {

    private ProposedStops() {
    }

    /** By team, in the order of the event, and arrival. */
    static List<PlannedStop> of(EventProblem event, Roster roster) {
        List<Team> teams = event.teams();
        return List.copyOf(roster.stays()).stream().map(stay -> stop(event, stay, roster))
                .sorted(Comparator.comparingInt((PlannedStop stop) -> teams.indexOf(stop.team()))
                        .thenComparing(stop -> stop.stay().start()))
                .toList();
    }

    private static PlannedStop stop(EventProblem event, Stay stay, Roster roster) {
        double gain = roster.gain(stay);
        double turnGain = roster.gainOfATurn(stay);
        List<PlannedTurn> turns = new ArrayList<>();
        stay.turns().forEach(turn -> turns.add(new PlannedTurn(event.bird(turn.bird()),
                event.clock().window(turn.start(), turn.end()), turnGain, Optional.empty())));
        Optional<KeptStop> kept = stay.fixed().map(event::kept);
        kept.ifPresent(k -> k.turns().forEach(t -> turns.add(new PlannedTurn(t.turn().getBird(), t.window(), turnGain,
                Optional.of(t.turn())))));
        turns.sort(Comparator.comparing(turn -> turn.window().start()));
        return kept.map(k -> new PlannedStop(k.team(), k.site(), k.window(), turns, gain, Optional.of(k.stop()),
                        Optional.empty()))
                .orElseGet(() -> new PlannedStop(event.teamOf(stay), event.site(stay.site()),
                        event.clock().window(stay.arrival(), stay.departure()), turns, gain, Optional.empty(),
                        Optional.empty()));
    }
}
