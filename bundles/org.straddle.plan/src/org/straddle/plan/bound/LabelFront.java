package org.straddle.plan.bound;

import java.util.Arrays;

/** Labels of which none beats another. */
final class LabelFront {

    private final Labels labels;
    private int[] front = new int[8];
    private int size;

    LabelFront(Labels labels) {
        this.labels = labels;
    }

    void clear() {
        size = 0;
    }

    int size() {
        return size;
    }

    int get(int index) {
        return front[index];
    }

    boolean beats(double value, double jointly, long memory, int driven) {
        for (int i = 0; i < size; i++) {
            if (labels.beats(front[i], value, jointly, memory, driven)) {
                return true;
            }
        }
        return false;
    }

    /** Takes a label in unless another beats it, and drops those that it beats. */
    boolean add(int label) {
        return add(label, false);
    }

    /** The same for labels that leave: an earlier one is not beaten by a later one. */
    boolean addLeaving(int label) {
        return add(label, true);
    }

    private boolean add(int label, boolean leaving) {
        for (int i = 0; i < size; i++) {
            if (isFirst(front[i], label, leaving) && labels.beats(front[i], label)) {
                return false;
            }
        }
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (!(isFirst(label, front[i], leaving) && labels.beats(label, front[i]))) {
                front[kept++] = front[i];
            }
        }
        size = kept;
        if (size == front.length) {
            front = Arrays.copyOf(front, 2 * size);
        }
        front[size++] = label;
        return true;
    }

    private boolean isFirst(int label, int other, boolean leaving) {
        return !leaving || labels.count(label) <= labels.count(other);
    }
}
