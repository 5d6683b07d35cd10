package org.straddle.worth;

import java.util.Collection;
import java.util.List;
import java.util.Set;

import org.straddle.grid.Square;
import org.straddle.outlook.Demands;

/** How many chasers of a group still need which squares. */
public sealed interface Needs {

    /** How many need a square, not negative. */
    double of(Square square);

    /** How many need at least one of these squares. */
    double ofAny(Collection<Square> squares);

    /** How many chasers there are, whatever they need. */
    double chasers();

    /**
     * So many chasers of whom nobody is known: each needs each square with the probability that the event's demand gives,
     * and one square has nothing to do with another.
     */
    record ByDemand(double chasers, Demands demands) implements Needs {
        @Override
        public double of(Square square) {
            return chasers * demands.of(square);
        }

        @Override
        public double ofAny(Collection<Square> squares) {
            double none = 1;
            for (Square square : squares) {
                none *= 1 - demands.of(square);
            }
            return chasers * (1 - none);
        }
    }

    /** Chasers who said what they need. @param each the squares that one of them needs */
    record ByList(List<Set<Square>> each) implements Needs {
        public ByList {
            each = each.stream().map(Set::copyOf).toList();
        }

        @Override
        public double of(Square square) {
            return each.stream().filter(needed -> needed.contains(square)).count();
        }

        @Override
        public double ofAny(Collection<Square> squares) {
            return each.stream().filter(needed -> squares.stream().anyMatch(needed::contains)).count();
        }

        @Override
        public double chasers() {
            return each.size();
        }
    }
}
