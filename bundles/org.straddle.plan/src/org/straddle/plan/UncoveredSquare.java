package org.straddle.plan;

import org.straddle.grid.Square;

/**
 * A square that chasers need and that the plan does not work.
 *
 * @param demand share of chasers that still need it, 0 to 1
 * @param reason the first thing that stands in the way
 */
public record UncoveredSquare(Square square, double demand, Reason reason) {

    /** What stands in the way, from the hardest to the softest. */
    public enum Reason {
        NO_SITE("No site that may be used claims this square."),
        NO_PASS("No workable pass long and high enough crosses its sites on a day when a team is out."),
        NO_TIME("No team could drive there, work a pass and be back in time, even with nothing else to do "
                + "but its pinned stops."),
        CONTESTED("A team could go there, but the plan gives its time, the square or the bird to other work.");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }

        /** For the user. */
        public String sentence() {
            return sentence;
        }
    }
}
