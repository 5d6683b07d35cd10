package org.straddle.kit;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

import org.straddle.model.KitItem;
import org.straddle.model.WorkMode;
import org.straddle.words.Catalogue;

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
        return EnumSet.copyOf(stops).stream().map(Words::mode).collect(Collectors.joining(", "))
                .replaceFirst(", (?=[^,]*$)", " and ");
    }

    /** What fails, what it stops and what to do about it. */
    public String sentence() {
        return TEXTS.text("singlePoint.hasSpareIf", "item", Words.name(item), "modesText", modesText(),
                "case", stops.size() > 1, "role", item.getRole().getLiteral());
    }
}
