package org.straddle.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.straddle.model.Ban;
import org.straddle.words.Catalogue;
import org.straddle.worth.PlanWorth;

/**
 * A whole plan, ready to look at and to apply. It names objects of the snapshot it was made from; their
 * ids lead to the live ones.
 *
 * @param stops      the pinned and the proposed ones, by team day and arrival
 * @param chasers    whom the plan is expected to serve, pinned stops included
 * @param worth      expected chasers served with a square they needed, pinned stops included, less a small
 *                   price for driving that is still to be done
 * @param keeping    what kept turns of the present plan are worth besides, see {@link Replan}; 0 for a plan from nothing
 * @param upperBound no plan of this event can have more {@link #objective()} whose turns are what the planner offers:
 *                   passes as far as they can be worked, very long ones in parts, and turns of the present plan as they
 *                   are; empty when the planner knows none
 * @param uncovered  squares that somebody needs and the plan does not work, most needed first
 * @param idle       teams without a stop, and why
 * @param seed       of the search
 * @param iterations how many the search made
 * @param elapsed    wall-clock time of the search
 * @param ending     why the search ended
 * @param way        how the plan was made
 * @param replan     how it was to hold on to the present plan
 * @param bans       new ones, of the what-ifs, that go in with the plan
 * @param changes    what it makes of the present plan, in order of time
 */
public record Proposal(List<PlannedStop> stops, PlanWorth chasers, double worth, double keeping, OptionalDouble upperBound,
        List<UncoveredSquare> uncovered, List<IdleTeam> idle, long seed, long iterations, Duration elapsed, Ending ending, Way way,
        Replan replan, List<Ban> bans, List<PlanChange> changes) {

    private static final Catalogue TEXTS = Catalogue.of(Proposal.class);

    /** Why a search ended. */
    public enum Ending {
        /** The limit of time or iterations was reached. */
        LIMIT,
        /** Somebody cancelled: this is the best plan until then. */
        STOPPED,
        /** The bound says that no plan is worth more. */
        PROVEN,
        /** There was nothing to search. */
        NOBODY_OUT,
        /** There was nothing to search. */
        NOTHING_TO_WORK,
        /** There was nothing to search. */
        NOTHING_WANTED;

        /** For the user: why nothing was searched, and what to do; empty when there was a search. */
        public Optional<String> whyNothing() {
            return switch (this) {
                case NOBODY_OUT -> Optional.of(TEXTS.text("nothing.nobodyOut"));
                case NOTHING_TO_WORK -> Optional.of(TEXTS.text("nothing.toWork"));
                case NOTHING_WANTED -> Optional.of(TEXTS.text("nothing.wanted"));
                case LIMIT, STOPPED, PROVEN -> Optional.empty();
            };
        }
    }

    /** How a plan was made. */
    public enum Way {
        WITH_BOUND,
        SEARCH_ALONE,
        SOLVER_MISSING,
        BOUND_FAILED;

        /** For the user. */
        public String sentence() {
            return TEXTS.text(this);
        }
    }

    /**
     * Whether there is nothing to put in: nothing was searched, and nothing new is banned. It would only wipe the
     * present plan.
     */
    public boolean bringsNothing() {
        return ending.whyNothing().isPresent() && bans.isEmpty();
    }

    /** For the user: {@code 1 stop with 3 turns}. */
    public String size() {
        int turns = stops.stream().mapToInt(stop -> stop.turns().size()).sum();
        return TEXTS.text("proposal.size", "stops", stops.size(), "turns", turns);
    }

    /** For the user: how the plan was made, and whether with a bound. */
    public String howItWasMade() {
        return way == Way.WITH_BOUND && upperBound.isEmpty() ? TEXTS.text("proposal.beforeBound") : way.sentence();
    }

    /** What the search makes as large as it can, and what the bound is for. */
    public double objective() {
        return worth + keeping;
    }

    /** How many turns of the present plan it keeps, moves, drops, or how many it adds. */
    public long changes(PlanChange.Kind kind) {
        return changes.stream().filter(change -> change.kind() == kind).count();
    }

    /** What the best plan of all may have more objective than this one at most, as a share of the bound, 0 to 1. */
    public OptionalDouble gap() {
        return gap(objective(), upperBound);
    }

    /** The same for any plan; empty when the bound is missing or not above zero. */
    public static OptionalDouble gap(double worth, OptionalDouble upperBound) {
        return upperBound.isEmpty() || upperBound.getAsDouble() <= 0 ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, Math.min(1, 1 - worth / upperBound.getAsDouble())));
    }

    public Proposal {
        stops = List.copyOf(stops);
        uncovered = List.copyOf(uncovered);
        idle = List.copyOf(idle);
        bans = List.copyOf(bans);
        changes = List.copyOf(changes);
    }
}
