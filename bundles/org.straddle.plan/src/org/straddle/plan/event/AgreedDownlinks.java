package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.model.Access;
import org.straddle.model.Fresh;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.FreeDownlink;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.Work;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;

/**
 * Gives every turn of a proposal its place in the passband: the one that was agreed before, unless another team that is
 * on the bird at the same time is too near; and one of its own where it meets another team and nothing was agreed. What
 * is kept, as it is pinned or began, is not moved.
 */
final class AgreedDownlinks {

    private final Outlook outlook;
    // By identity: two teams can have turns that are equal.
    private final Map<PlannedTurn, Work> works = new IdentityHashMap<>();
    private final Map<PlannedTurn, Double> agreed = new IdentityHashMap<>();

    private AgreedDownlinks(Outlook outlook) {
        this.outlook = outlook;
    }

    static List<PlannedStop> in(List<PlannedStop> stops, Outlook outlook) {
        AgreedDownlinks downlinks = new AgreedDownlinks(outlook);
        downlinks.agree(stops);
        return stops.stream().map(stop -> stop.with(stop.turns().stream()
                .map(turn -> turn.on(downlinks.agreed.getOrDefault(turn, turn.agreedBeforeMhz()))).toList())).toList();
    }

    private void agree(List<PlannedStop> stops) {
        List<PlannedTurn> turns = new ArrayList<>();
        for (PlannedStop stop : stops) {
            for (PlannedTurn turn : stop.turns()) {
                if (turn.bird().getAccess() == Access.PASSBAND) {
                    works.put(turn, new Work(turn.kept().or(turn::continued).orElseGet(Fresh::turn), Fresh.stop(),
                            stop.team(), stop.site(), turn.bird(), turn.window()));
                    turns.add(turn);
                }
            }
        }
        // Who cannot move chooses first, then who had a place, then the rest; each by time.
        turns.sort(Comparator.comparing((PlannedTurn turn) -> turn.kept().isEmpty())
                .thenComparing(turn -> !(turn.agreedBeforeMhz() > 0)).thenComparing(turn -> turn.window().start()));
        turns.forEach(turn -> agreed.put(turn, agree(turn)));
    }

    private double agree(PlannedTurn turn) {
        double before = turn.agreedBeforeMhz();
        List<PlannedTurn> met = turn.kept().isPresent() ? List.of() : works.keySet().stream()
                .filter(other -> other.bird() == turn.bird() && other.window().overlaps(turn.window())
                        && SharedTurns.of(outlook, works.get(turn), works.get(other)).isPresent()).toList();
        return met.isEmpty() ? before : FreeDownlink.of(met.stream()
                .map(other -> agreed.getOrDefault(other, other.kept().isPresent() ? other.agreedBeforeMhz() : 0.0))
                .filter(mhz -> mhz > 0).toList(), turn.bird(), before).orElse(0);
    }
}
