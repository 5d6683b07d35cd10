package org.straddle.kit.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The cheapest, then lightest single piece on offer that keeps a task possible when certain gear fails. */
public final class Remedy {

    private Remedy() {
    }

    /** Empty when no single piece does; two together may. */
    public static Optional<Gear> of(Task task, List<Gear> kit, List<Gear> offer, Gear failed) {
        List<Gear> all = new ArrayList<>(kit);
        List<Gear> sorted = offer.stream().filter(gear -> gear.pieces() > 0).map(Gear::unmarked)
                .sorted(Comparator.comparing(Cost::of)).toList();
        all.addAll(sorted);
        Pieces pieces = new Pieces(all);
        Condition condition = Condition.of(Demands.of(task, pieces, kit.size()), pieces);
        BitSet left = new BitSet();
        left.set(0, new Pieces(kit).size());
        left.stream().filter(piece -> pieces.gear(piece) == failed).findFirst().ifPresent(left::clear);
        Gear last = null;
        for (int piece = new Pieces(kit).size(); piece < pieces.size(); piece++) {
            if (pieces.gear(piece) != last) {
                last = pieces.gear(piece);
                left.set(piece);
                if (condition.holds(left)) {
                    return Optional.of(last);
                }
                left.clear(piece);
            }
        }
        return Optional.empty();
    }
}
