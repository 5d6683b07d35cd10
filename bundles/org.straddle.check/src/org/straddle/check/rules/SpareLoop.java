package org.straddle.check.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Identified;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.outlook.Outlook;

/** Items that are spares of each other in a ring leave nothing that is the original. */
final class SpareLoop extends NamedRule {

    SpareLoop() {
        super("spare-loop", Severity.WARNING, "A spare does not stand in for itself");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Set<KitItem> known = new HashSet<>();
        for (Kit kit : outlook.event().getKits()) {
            for (KitItem item : kit.getItems()) {
                List<KitItem> path = new ArrayList<>();
                KitItem next = item;
                while (!Itinerary.isMissing(next) && known.add(next)) {
                    path.add(next);
                    next = next.getSpareFor();
                }
                int ring = path.indexOf(next);
                if (ring >= 0) {
                    List<KitItem> loop = path.subList(ring, path.size());
                    findings.accept(Finding.of(this, loop.size() == 1
                            ? "\"" + loop.get(0).getName() + "\" is written down as a spare for itself."
                            : Words.list(loop.stream().map(i -> "\"" + i.getName() + "\"").toList())
                                    + " are written down as spares for each other in a ring.",
                            loop.toArray(Identified[]::new)));
                }
            }
        }
    }
}
