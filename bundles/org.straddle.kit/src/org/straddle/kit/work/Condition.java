package org.straddle.kit.work;

import java.util.BitSet;
import java.util.List;
import java.util.Map;

/** Can the task be done with only these pieces? A monotone question. */
@FunctionalInterface
interface Condition {

    boolean holds(BitSet there);

    static Condition of(Map<Requirement, Formula> formulas, Pieces pieces) {
        List<Formula> parts = List.copyOf(formulas.values());
        Formula whole = new Formula.All(parts);
        return there -> whole.holds(pieces.working(there));
    }
}
