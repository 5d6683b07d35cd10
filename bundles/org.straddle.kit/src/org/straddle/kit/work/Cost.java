package org.straddle.kit.work;

import java.util.Comparator;

/** Money first, then weight, then pieces to carry. */
public record Cost(long cents, long grams, int pieces) implements Comparable<Cost> {

    static final Cost NOTHING = new Cost(0, 0, 0);

    private static final Comparator<Cost> ORDER = Comparator.comparingLong(Cost::cents).thenComparingLong(Cost::grams)
            .thenComparingInt(Cost::pieces);

    static Cost of(Gear piece) {
        return new Cost(piece.cents(), piece.grams(), 1);
    }

    Cost plus(Cost other) {
        return new Cost(cents + other.cents, grams + other.grams, pieces + other.pieces);
    }

    @Override
    public int compareTo(Cost other) {
        return ORDER.compare(this, other);
    }
}
