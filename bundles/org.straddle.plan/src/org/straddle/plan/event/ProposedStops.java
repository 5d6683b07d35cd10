package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Team;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;
import org.straddle.sky.Window;

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
        List<PlannedTurn> turns = new ArrayList<>();
        stay.turns().forEach(turn -> {
            Window window = event.clock().window(turn.start(), turn.end());
            Bird bird = event.bird(turn.bird());
            turns.add(new PlannedTurn(bird, window, event.numbers().worth().chance(event.site(stay.site()), bird, window),
                    roster.gain(stay, turn), Optional.empty()));
        });
        Optional<KeptStop> kept = stay.fixed().map(event::kept);
        kept.ifPresent(k -> k.turns().forEach(t -> {
            Bird bird = t.turn().getBird();
            Chance fixed = event.numbers().fixedTurn(stay.site(), bird, t.window());
            turns.add(new PlannedTurn(bird, t.window(), event.numbers().worth().chance(k.site(), bird, t.window()),
                    stay.fixedTurns().contains(fixed) ? roster.gain(stay, fixed) : 0, Optional.of(t.turn())));
        }));
        turns.sort(Comparator.comparing(turn -> turn.window().start()));
        return kept.map(k -> new PlannedStop(k.team(), k.site(), k.window(), turns, gain, Optional.of(k.stop()),
                        Optional.empty()))
                .orElseGet(() -> new PlannedStop(event.teamOf(stay), event.site(stay.site()),
                        event.clock().window(stay.arrival(), stay.departure()), turns, gain, Optional.empty(),
                        Optional.empty()));
    }
}
