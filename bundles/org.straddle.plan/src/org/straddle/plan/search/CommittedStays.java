package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.List;

import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Puts the stops back for the turns that days committed, as far as bans, roads and the others allow: where a search that
 * is to hold on to an earlier plan begins. A stop that does not fit as a whole is tried turn by turn.
 */
final class CommittedStays {

    private final PlanProblem problem;
    private final Roster roster;

    private CommittedStays(Roster roster) {
        this.roster = roster;
        problem = roster.problem();
    }

    /** @param roster holds fixed stays only */
    static void putBack(Roster roster) {
        CommittedStays committed = new CommittedStays(roster);
        for (int day = 0; day < roster.problem().days().size(); day++) {
            committed.putBack(day);
        }
    }

    private void putBack(int day) {
        List<Chance> stop = new ArrayList<>();
        for (Chance turn : problem.commitments().of(day)) {
            if (isInFixed(day, turn)) {
                continue; // the fixed stay takes it in when it is filled
            }
            if (!stop.isEmpty() && !belongs(turn, stop)) {
                put(day, stop);
                stop.clear();
            }
            stop.add(turn);
        }
        put(day, stop);
    }

    private boolean isInFixed(int day, Chance turn) {
        return roster.day(day).stream().anyMatch(stay -> stay.fixed().isPresent() && stay.site() == turn.site()
                && stay.arrival() <= turn.start() && turn.end() <= stay.departure());
    }

    private boolean belongs(Chance turn, List<Chance> stop) {
        Chance last = stop.get(stop.size() - 1);
        return last.site() == turn.site() && problem.times().follows(last, turn);
    }

    private void put(int day, List<Chance> turns) {
        if (!turns.isEmpty() && !fits(Stay.around(day, turns, problem.times())) && turns.size() > 1) {
            turns.forEach(turn -> fits(Stay.around(day, List.of(turn), problem.times())));
        }
    }

    /** Adds the stay if it fits. */
    private boolean fits(Stay stay) {
        boolean free = problem.banned().before(stay.day(), stay.site(), stay.arrival(), stay.departure()) != BannedTimes.BANNED
                && stay.turns().stream().allMatch(turn -> problem.banned().allows(stay.day(), turn) && !roster.birdIsTaken(turn))
                && problem.squaresOfSite().get(stay.site()).stream().flatMap(square -> roster.holdsOf(square).stream())
                        .noneMatch(hold -> hold.overlaps(stay.arrival(), stay.departure()))
                && roster.day(stay.day()).stream().noneMatch(other -> other.overlaps(stay.arrival(), stay.departure()));
        if (!free) {
            return false;
        }
        roster.add(stay);
        if (roster.canBeDriven(stay.day())) {
            return true;
        }
        roster.remove(stay);
        return false;
    }
}
