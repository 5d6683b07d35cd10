package org.straddle.kit.work;

import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The cheapest set with a member in each of some sets, by branch and bound: branch on the members of a set not hit yet,
 * forbidding those already tried; bound by the cheapest members of sets that share none.
 */
final class HittingSet {

    private final List<BitSet> sets;
    private final Cost[] costs;
    private final BooleanSupplier late;
    private BitSet best;
    private Cost least;

    private HittingSet(List<BitSet> sets, Cost[] costs, BooleanSupplier late) {
        this.sets = sets;
        this.costs = costs;
        this.late = late;
    }

    /**
     * @param late asked now and then; true ends the search
     * @return null when time ran out before the cheapest was proven
     */
    static BitSet cheapest(List<BitSet> sets, Cost[] costs, BooleanSupplier late) {
        HittingSet search = new HittingSet(sets, costs, late);
        search.branch(new BitSet(), Cost.NOTHING, new BitSet());
        return late.getAsBoolean() ? null : search.best;
    }

    private void branch(BitSet chosen, Cost cost, BitSet barred) {
        if (late.getAsBoolean()) {
            return;
        }
        BitSet next = null;
        Cost bound = cost;
        BitSet used = new BitSet();
        for (BitSet set : sets) {
            if (set.intersects(chosen)) {
                continue;
            }
            BitSet open = (BitSet) set.clone();
            open.andNot(barred);
            if (open.isEmpty()) {
                return;
            }
            if (next == null || open.cardinality() < next.cardinality()) {
                next = open;
            }
            if (!open.intersects(used)) {
                bound = bound.plus(open.stream().mapToObj(i -> costs[i]).min(Cost::compareTo).orElseThrow());
                used.or(open);
            }
        }
        if (least != null && bound.compareTo(least) >= 0) {
            return;
        }
        if (next == null) {
            best = (BitSet) chosen.clone();
            least = cost;
            return;
        }
        BitSet tried = (BitSet) barred.clone();
        int[] members = next.stream().boxed().sorted((a, b) -> costs[a].compareTo(costs[b])).mapToInt(i -> i).toArray();
        for (int member : members) {
            chosen.set(member);
            branch(chosen, cost.plus(costs[member]), tried);
            chosen.clear(member);
            tried = (BitSet) tried.clone();
            tried.set(member);
        }
    }
}
