package org.straddle.plan.bound;

import java.util.Arrays;

/** The labels of one {@link RoutePricing} gap in parallel arrays, because there may be a million of them. */
final class Labels {

    private double[] value = new double[1024];
    private double[] jointly = new double[1024];
    private long[] memory = new long[1024];
    private int[] from = new int[1024];
    private int[] chance = new int[1024];
    private int[] count = new int[1024];
    private int[] driven = new int[1024];
    private int size;
    private Memory remembers;
    private double[] most = new double[0];

    void clear() {
        size = 0;
    }

    /** From now on labels are compared by what these prices still pay for remembered squares. */
    void compareBy(Memory memory, Prices prices) {
        remembers = memory;
        most = new double[memory.size()];
        for (int slot = 0; slot < most.length; slot++) {
            most[slot] = prices.most(memory.square(slot));
        }
    }

    /**
     * @param value   of the way so far, with each visit paid by itself
     * @param jointly the same with the day's joint squares paid turn by turn, see {@link RoutePricing}
     * @param driven seconds at the wheel so far, where the limit of the day is minded; else 0
     * @param from   label before this one on its way
     * @param chance last one worked
     * @param count  position of the first chance where a stop ends; the next label where labels queue up, the second
     *               where they leave
     */
    int add(double value, double jointly, long memory, int driven, int from, int chance, int count) {
        if (size == this.value.length) {
            grow();
        }
        this.value[size] = value;
        this.jointly[size] = jointly;
        this.memory[size] = memory;
        this.driven[size] = driven;
        this.from[size] = from;
        this.chance[size] = chance;
        this.count[size] = count;
        return size++;
    }

    private void grow() {
        value = Arrays.copyOf(value, 2 * size);
        jointly = Arrays.copyOf(jointly, 2 * size);
        memory = Arrays.copyOf(memory, 2 * size);
        from = Arrays.copyOf(from, 2 * size);
        chance = Arrays.copyOf(chance, 2 * size);
        count = Arrays.copyOf(count, 2 * size);
        driven = Arrays.copyOf(driven, 2 * size);
    }

    int size() {
        return size;
    }

    double value(int label) {
        return value[label];
    }

    double jointly(int label) {
        return jointly[label];
    }

    long memory(int label) {
        return memory[label];
    }

    int driven(int label) {
        return driven[label];
    }

    int from(int label) {
        return from[label];
    }

    int chance(int label) {
        return chance[label];
    }

    int count(int label) {
        return count[label];
    }

    /** Whether whatever may follow on the way of the other may follow on this one, and its way is worth no less then. */
    boolean beats(int label, int other) {
        return beats(label, value[other], jointly[other], memory[other], driven[other]);
    }

    boolean beats(int label, double otherValue, double otherJointly, long otherMemory, int otherDriven) {
        double lead = Math.min(value[label] - otherValue, jointly[label] - otherJointly);
        if (driven[label] > otherDriven || Memory.visits(otherMemory & ~memory[label]) != 0) {
            return false;
        }
        if (lead < 0 || memory[label] == otherMemory) {
            return lead >= 0;
        }
        for (int slot = 0; slot < most.length && lead >= 0; slot++) {
            int more = remembers.level(memory[label], slot) - remembers.level(otherMemory, slot);
            if (more > 0) {
                lead -= more * most[slot] / Memory.ALL; // the one that remembers more may be paid so much less
            }
        }
        return lead >= 0;
    }
}
