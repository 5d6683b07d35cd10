package org.straddle.plan.problem;

/**
 * What a station needs around its turns, in seconds, and the stop that follows from it: stops begin and end
 * on whole minutes, rounded outwards, because people read them off a sheet.
 *
 * @param setUp    from arrival until the station can work
 * @param takeDown from the last turn until the team can leave
 * @param turnGap  least time between two turns of a team
 */
public record StationTimes(int setUp, int takeDown, int turnGap) {

    /** Stops begin and end on multiples of this, seconds. */
    public static final int STEP = 60;

    /** The first moment at which a station can work in a stop. */
    public int ready(int arrival) {
        return arrival + setUp;
    }

    /** The moment at which it has to come down. */
    public int packing(int departure) {
        return departure - takeDown;
    }

    /** Whether a team may work the second after the first. */
    public boolean follows(Chance earlier, Chance later) {
        return earlier.end() + turnGap <= later.start();
    }

    /** Whether a team may work both, whichever comes first. */
    public boolean areApart(Chance a, Chance b) {
        return follows(a, b) || follows(b, a);
    }

    /** Latest arrival for a first turn that starts then. */
    public int arrivalFor(int turnStart) {
        return Math.floorDiv(turnStart - setUp, STEP) * STEP;
    }

    /** Earliest departure after a last turn that ends then. */
    public int departureAfter(int turnEnd) {
        return -Math.floorDiv(-(turnEnd + takeDown), STEP) * STEP;
    }
}
