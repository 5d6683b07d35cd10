package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * What a day remembers of its earlier stops: whether it adds up its driving, and how much of what some squares can pay it
 * has been paid already, packed into a number, {@value #BITS} bits a square and rounded down. A day that remembers all is
 * priced truly; one that forgets some is priced too well, which keeps a bound valid. So it remembers only what turned out
 * to matter, since each thing costs time (the ng-route relaxation with memories that grow).
 */
final class Memory {

    /** More would make pricing slow. */
    static final int MOST_SQUARES = 20;

    private static final int BITS = 3;

    /** Visits that a day can be made to make. */
    static final int MOST_VISITS = 64 - MOST_SQUARES * BITS;

    /** The level at which a square has paid all. */
    static final int ALL = (1 << BITS) - 1;

    private static final double NEARLY = 1 - 1e-9;

    private final List<Integer> squares = new ArrayList<>();
    private boolean driving;

    /** Remembers one square more, if there is room. */
    boolean add(int square) {
        return squares.size() < MOST_SQUARES && !squares.contains(square) && squares.add(square);
    }

    /** From now on the day minds its limit of driving. */
    boolean addDriving() {
        boolean fresh = !driving;
        driving = true;
        return fresh;
    }

    boolean driving() {
        return driving;
    }

    List<Integer> squares() {
        return List.copyOf(squares);
    }

    int size() {
        return squares.size();
    }

    int square(int slot) {
        return squares.get(slot);
    }

    /** Where it remembers a square; negative when it does not. */
    int slot(int square) {
        return squares.indexOf(square);
    }

    /** Marks in a memory that one of the visits was made which a day has to make, see {@link Decision}. */
    static long visit(int which) {
        return 1L << MOST_SQUARES * BITS + which;
    }

    /** Which of those visits were made, as marks. */
    static long visits(long memory) {
        return memory >>> MOST_SQUARES * BITS << MOST_SQUARES * BITS;
    }

    /** How much of a square was paid, 0 to {@link #ALL}. */
    int level(long memory, int slot) {
        return (int) (memory >>> slot * BITS) & ALL;
    }

    /**
     * Two stops are not added up: how much both have been paid together depends on more than their levels.
     *
     * @param share of what the square can pay that one more stop has been paid, 0 to 1
     */
    long plus(long memory, int slot, double share) {
        int before = level(memory, slot);
        int level = Math.max(before, share >= NEARLY ? ALL : Math.min(ALL - 1, (int) (ALL * share)));
        return memory + ((long) (level - before) << slot * BITS);
    }
}
