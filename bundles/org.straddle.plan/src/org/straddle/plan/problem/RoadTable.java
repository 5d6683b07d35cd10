package org.straddle.plan.problem;

import java.util.function.IntBinaryOperator;

/**
 * Drives between all places of a problem: first its sites, by their index, then its bases. Whole seconds,
 * rounded up by whoever makes it.
 */
public final class RoadTable {

    /** A place nobody named: the way there and back takes no time. */
    public static final int NOWHERE = -1;

    private final int[][] driving;
    private final int[][] total;

    /**
     * @param driving seconds at the wheel from one place to another
     * @param total   the same with breaks
     */
    public RoadTable(int places, IntBinaryOperator driving, IntBinaryOperator total) {
        this.driving = filled(places, driving);
        this.total = filled(places, total);
    }

    private static int[][] filled(int places, IntBinaryOperator seconds) {
        int[][] table = new int[places][places];
        for (int from = 0; from < places; from++) {
            for (int to = 0; to < places; to++) {
                table[from][to] = from == to ? 0 : seconds.applyAsInt(from, to);
            }
        }
        return table;
    }

    public int places() {
        return total.length;
    }

    public int drivingSeconds(int from, int to) {
        return from == NOWHERE || to == NOWHERE ? 0 : driving[from][to];
    }

    public int totalSeconds(int from, int to) {
        return from == NOWHERE || to == NOWHERE ? 0 : total[from][to];
    }
}
