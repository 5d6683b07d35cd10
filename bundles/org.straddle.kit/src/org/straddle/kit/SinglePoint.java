package org.straddle.kit;

import java.util.EnumSet;
import java.util.Set;

import org.straddle.model.KitItem;
import org.straddle.model.WorkMode;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.ListText;

/**
 * An item whose failure alone stops a mode of work.
 *
 * @param stops the modes that end with it, at least one
 */
public record SinglePoint(KitItem item, Set<WorkMode> stops) {

    private static final Catalogue TEXTS = Catalogue.of(SinglePoint.class);

    public SinglePoint {
        stops = Set.copyOf(stops);
    }

    /** The modes in words: "FM, linear and data". */
    public String modesText() {
        return ListText.all(EnumSet.copyOf(stops).stream().map(Naming::of).toList());
    }

    /** What fails, what it stops and what to do about it. */
    public String sentence() {
        return TEXTS.text("singlePoint.hasSpareIf", "item", Naming.name(item), "modesText", modesText(),
                "case", stops.size() > 1, "role", Naming.of(item.getRole()));
    }
}
