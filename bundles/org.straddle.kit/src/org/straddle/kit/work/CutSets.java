package org.straddle.kit.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The minimal cut sets of a monotone condition up to an order, exactly, by Reiter's hitting-set tree: a cut must take away
 * a piece of every set that suffices, so one such set names all candidates for the first failure, one of what is left all
 * for the second, and so on.
 */
final class CutSets {

    private final Condition condition;
    private final int order;
    private final Set<BitSet> seen = new HashSet<>();
    private final List<BitSet> found = new ArrayList<>();

    private CutSets(Condition condition, int order) {
        this.condition = condition;
        this.order = order;
    }

    /** All minimal cut sets of at most so many pieces, smallest first; none when the condition does not hold at all. */
    static List<BitSet> of(Condition condition, BitSet there, int order) {
        if (!condition.holds(there)) {
            return List.of();
        }
        CutSets cuts = new CutSets(condition, order);
        cuts.below(there, new BitSet());
        List<BitSet> sorted = new ArrayList<>(cuts.found);
        sorted.sort(Comparator.comparingInt(BitSet::cardinality).thenComparing(BitSet::toString));
        List<BitSet> minimal = new ArrayList<>();
        for (BitSet cut : sorted) {
            if (minimal.stream().noneMatch(smaller -> contains(cut, smaller))) {
                minimal.add(cut);
            }
        }
        return minimal;
    }

    private void below(BitSet there, BitSet failed) {
        BitSet enough = enough(condition, there);
        for (int piece = enough.nextSetBit(0); piece >= 0; piece = enough.nextSetBit(piece + 1)) {
            BitSet more = (BitSet) failed.clone();
            more.set(piece);
            if (!seen.add(more)) {
                continue;
            }
            BitSet left = (BitSet) there.clone();
            left.clear(piece);
            if (!condition.holds(left)) {
                found.add(more);
            } else if (more.cardinality() < order) {
                below(left, more);
            }
        }
    }

    /** A set of pieces that suffices and none of which can be left out. The condition must hold for all that is there. */
    static BitSet enough(Condition condition, BitSet there) {
        BitSet enough = (BitSet) there.clone();
        for (int piece = there.length() - 1; piece >= 0; piece--) {
            if (enough.get(piece)) {
                enough.clear(piece);
                if (!condition.holds(enough)) {
                    enough.set(piece);
                }
            }
        }
        return enough;
    }

    private static boolean contains(BitSet set, BitSet part) {
        BitSet rest = (BitSet) part.clone();
        rest.andNot(set);
        return rest.isEmpty();
    }
}
