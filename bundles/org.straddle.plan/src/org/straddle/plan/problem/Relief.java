package org.straddle.plan.problem;

/**
 * How long a team may be at one site before others have to take over. A team that leaves and comes back has been there all
 * the time, unless it was elsewhere in between or away for long enough.
 *
 * @param longest seconds from arriving to leaving
 * @param away    seconds between two stays at a site after which the count begins anew
 */
public record Relief(int longest, int away) {

    /** Teams may stay as long as they like. */
    public static final Relief NOT_NEEDED = new Relief(Integer.MAX_VALUE, 0);

    public Relief {
        if (longest <= 0 || away < 0) {
            throw new IllegalArgumentException("no relief: " + longest + " s, " + away + " s away");
        }
    }

    public boolean isNeeded() {
        return longest < Integer.MAX_VALUE;
    }

    /** Whether a stay that begins then goes on with one that ended at the same site. */
    public boolean goesOn(int departure, int arrival) {
        return arrival - departure < away;
    }
}
