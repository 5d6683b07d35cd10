package org.straddle.kit.team;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.straddle.model.KitItem;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/**
 * Items that stand in for each other in a ring, or one that claims to stand in for itself. A ring of two or more does
 * no harm, each has a spare; but nothing says which one is in use. An item is never its own spare.
 *
 * @param items the ring, each standing in for the next and the last for the first
 */
public record SpareLoop(List<KitItem> items) {

    private static final Catalogue TEXTS = Catalogue.of(SpareLoop.class);

    public SpareLoop {
        items = List.copyOf(items);
    }

    /** Each ring once; an item points at one other at most, so following the pointers finds them all. */
    public static List<SpareLoop> in(List<KitItem> items) {
        List<SpareLoop> loops = new ArrayList<>();
        Set<KitItem> seen = new HashSet<>();
        for (KitItem start : items) {
            List<KitItem> path = new ArrayList<>();
            KitItem item = start;
            while (item != null && seen.add(item)) {
                path.add(item);
                item = item.getSpareFor();
            }
            if (path.contains(item)) {
                loops.add(new SpareLoop(path.subList(path.indexOf(item), path.size())));
            }
        }
        return loops;
    }

    /** What is odd and what to do about it. */
    public String sentence() {
        if (items.size() == 1) {
            return TEXTS.text("spareLoop.enteredAsIts", "items", Naming.name(items.get(0)));
        }
        return TEXTS.text("spareLoop.enteredAsEach",
                "joining", items.stream().map(item -> "“" + Naming.name(item) + "”").collect(Collectors.joining(", ")));
    }
}
