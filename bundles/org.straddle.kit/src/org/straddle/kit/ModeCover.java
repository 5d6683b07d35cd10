package org.straddle.kit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.WorkMode;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;

/**
 * Can a kit do one mode of work, and what would end it?
 *
 * <p>A mode works when every role it needs is filled and every item that the club marked as needed is there, itself or
 * an item that can stand in for it in this mode. A single point is found by trying: take one item away; if the mode
 * then no longer works, its failure alone stops the mode. That finds an only antenna that nobody marked as needed,
 * which looking at the marks would not. Of several pieces of one item one is taken to be enough, so the others are
 * its spares.
 *
 * @param missingRoles needed roles that nothing in the kit fills
 * @param missingItems items marked as needed of which the kit has no piece and no spare
 * @param singlePoints items whose failure alone stops the mode; none when it does not work in the first place
 */
public record ModeCover(WorkMode mode, Set<Role> missingRoles, List<KitItem> missingItems,
        List<KitItem> singlePoints) {

    private static final Catalogue TEXTS = Catalogue.of(ModeCover.class);

    public ModeCover {
        missingRoles = Set.copyOf(missingRoles);
        missingItems = List.copyOf(missingItems);
        singlePoints = List.copyOf(singlePoints);
    }

    static ModeCover of(WorkMode mode, List<KitItem> items) {
        List<KitItem> serving = items.stream().filter(serves(mode)).toList();
        List<KitItem> present = serving.stream().filter(item -> item.getCount() > 0).toList();
        ModeCover whole = without(null, mode, serving, present);
        if (!whole.covered()) {
            return whole;
        }
        List<KitItem> singlePoints = present.stream().filter(item -> item.getCount() == 1)
                .filter(item -> !without(item, mode, serving, present).covered()).toList();
        return new ModeCover(mode, Set.of(), List.of(), singlePoints);
    }

    private static Predicate<KitItem> serves(WorkMode mode) {
        return item -> item.getModes().isEmpty() || item.getModes().contains(mode);
    }

    private static ModeCover without(KitItem failed, WorkMode mode, List<KitItem> serving, List<KitItem> present) {
        List<KitItem> left = new ArrayList<>(present);
        left.remove(failed);
        List<KitItem> missing = serving.stream().filter(KitItem::isNeeded)
                .filter(item -> left.stream().noneMatch(other -> other == item || other.getSpareFor() == item))
                .toList();
        return new ModeCover(mode, NeededRoles.missing(mode, left), missing, List.of());
    }

    /** Can the mode be worked with this kit? */
    public boolean covered() {
        return missingRoles.isEmpty() && missingItems.isEmpty();
    }

    /** One plain sentence about the mode. */
    public String sentence() {
        if (!covered()) {
            String lacking = Stream.concat(
                    missingRoles.isEmpty() ? Stream.empty()
                            : EnumSet.copyOf(missingRoles).stream().map(role -> TEXTS.text("modeCover.no",
                                    "role", Naming.of(role))),
                    missingItems.stream().map(item -> TEXTS.text("modeCover.piece", "item", Naming.name(item))))
                    .collect(Collectors.joining(", "));
            return TEXTS.text("modeCover.cannotWorkedKit", "mode", Sentence.begun(Naming.of(mode)), "lacking", lacking);
        }
        return TEXTS.text("modeCover.canWorked", "mode", Sentence.begun(Naming.of(mode)),
                "singlePoints", singlePoints.isEmpty() ? TEXTS.text("modeCover.singleFailureStops")
                : TEXTS.text("modeCover.wouldStopFailing", "items", singlePoints.size()));
    }
}
