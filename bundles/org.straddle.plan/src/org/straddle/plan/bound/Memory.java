package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * What a day remembers of its earlier stops: whether it adds up its driving, and how often it worked which squares,
 * packed into a number, so many bits a square. A day that
 * remembers all is priced truly; one that forgets some is priced too well, which keeps a bound valid. So it
 * remembers only what turned out to matter, since each thing costs time.
 */
final class Memory {

    /** More would make pricing slow; no day of the bench wants more than a dozen. */
    static final int MOST_SQUARES = 20;

    private final int most;
    private final int bits;
    private final List<Integer> squares = new ArrayList<>();
    private boolean driving;

    /** @param tiers how many passes from one square are worth anything */
    Memory(int tiers) {
        most = tiers;
        bits = Integer.SIZE - Integer.numberOfLeadingZeros(Math.max(1, tiers));
    }

    /** Remembers one square more, if there is room. */
    boolean add(int square) {
        boolean room = squares.size() < MOST_SQUARES && (squares.size() + 1) * bits < Long.SIZE;
        return room && !squares.contains(square) && squares.add(square);
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

    int size() {
        return squares.size();
    }

    int square(int slot) {
        return squares.get(slot);
    }

    /** Passes worked, at most as many as can be worth anything. */
    int worked(long memory, int slot) {
        return (int) (memory >>> slot * bits) & (1 << bits) - 1;
    }

    long plus(long memory, int slot, int passes) {
        int before = worked(memory, slot);
        return memory + ((long) (Math.min(most, before + passes) - before) << slot * bits);
    }
}
