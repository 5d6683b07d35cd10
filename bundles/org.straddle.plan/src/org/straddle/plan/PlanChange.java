package org.straddle.plan;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

import org.straddle.model.Turn;
import org.straddle.words.Catalogue;

/**
 * What a proposal makes of a turn of the present plan or of the last published schedule, or that it adds one. Turns that are pinned, or began before the
 * instant from which the plan is made, cannot change and are not listed unless a ban cuts them short.
 *
 * @param before   the turn of the present plan; empty when it is added, or was published and the present plan lacks it
 * @param after    the turn of the proposal; empty when it is dropped
 * @param at       when the turn begins, before or else after
 * @param sentence the whole of it, for the user
 */
public record PlanChange(Kind kind, Optional<Turn> before, Optional<PlannedTurn> after, Instant at, String sentence) {

    private static final Catalogue TEXTS = Catalogue.of(PlanChange.class);

    /** From the mildest to the hardest for those who rely on the plan. */
    public enum Kind {
        /** Same team, squares, bird and time. */
        KEPT,
        /** Published, no longer in the present plan, and worked again just as it was published. */
        RESTORED,
        /** New in the plan. */
        ADDED,
        /** Some chasers still get the bird from the square, but by another team, from another site, or at another time. */
        MOVED,
        /** No longer worked. */
        DROPPED;

        /** For the user. */
        public String word() {
            return TEXTS.text(this);
        }
    }

    public PlanChange {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(sentence, "sentence");
    }
}
