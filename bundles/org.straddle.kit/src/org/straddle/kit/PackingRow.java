package org.straddle.kit;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.straddle.model.InertText;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.WorkMode;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * One item on a packing list, as it was when the list was drawn up.
 *
 * @param item the item itself, to find it again; its facts may have changed since
 * @param kit name of the kit that it belongs to
 * @param count pieces, 0 or more
 * @param modes modes of work that need it; empty means every mode
 * @param spareFor name of the item that it can stand in for
 * @param weightKg weight of all its pieces, kg; 0 when nobody weighed it
 */
public record PackingRow(KitItem item, String kit, String name, int count, Role role, Set<WorkMode> modes,
        boolean needed, Optional<String> spareFor, double weightKg, String note, Optional<Packed> packed) {

    private static final Catalogue TEXTS = Catalogue.of(PackingRow.class);

    public PackingRow {
        modes = Set.copyOf(modes);
    }

    static PackingRow of(KitItem item) {
        String kit = item.eContainer() instanceof Kit its ? its.getName() : "";
        int count = Math.max(0, item.getCount());
        return new PackingRow(item, InertText.line(Written.or(kit, TEXTS.text("packingRow.unnamedKit"))), Naming.name(item), count,
                item.getRole(), Set.copyOf(item.getModes()), item.isNeeded(),
                Optional.ofNullable(item.getSpareFor()).map(Naming::name), count * Amount.of(item.getWeightKg()),
                InertText.line(Written.or(item.getNote(), "")), Packed.of(item.getTick()));
    }

    /** The modes in words: "every mode", or "FM, linear". */
    public String modesText() {
        return modes.isEmpty() ? TEXTS.text("packingRow.everyMode")
                : EnumSet.copyOf(modes).stream().map(Naming::of).collect(Collectors.joining(", "));
    }

    /** The weight in words, empty when nobody weighed it. */
    public String weightText() {
        return weightKg > 0 ? FigureText.inCurrent().kilograms(weightKg) : "";
    }
}
