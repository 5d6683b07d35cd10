package org.straddle.plan;

import java.util.OptionalDouble;

import org.straddle.grid.Square;
import org.straddle.words.Catalogue;

/**
 * A square that chasers need and that the plan does not work.
 *
 * @param demand share of chasers that still need it, 0 to 1
 * @param reason what kind of thing stands in the way, the hardest first
 * @param why    what it is in this case, a sentence or two
 * @param cost   what the plan would lose in all if it worked the square, in the best way that was found to do so; empty
 *               when no way is known
 */
public record UncoveredSquare(Square square, double demand, Reason reason, String why, OptionalDouble cost) {

    private static final Catalogue TEXTS = Catalogue.of(UncoveredSquare.class);

    /** What stands in the way, from the hardest to the softest. */
    public enum Reason {
        /** No site that may be used claims this square. */
        NO_SITE,
        /** No workable pass long and high enough crosses its sites while a team is out. */
        NO_PASS,
        /** Only bans stand in the way, and what crews may not do. */
        BANNED,
        /** No team could drive there, work a pass and be back in time, even with nothing to do but its fixed stops. */
        NO_TIME,
        /** A team could go there, but the plan gives its time, the square or the bird to other work. */
        CONTESTED;

        /** For the user, in a word or two. */
        public String word() {
            return TEXTS.text(this);
        }
    }
}
