package org.straddle.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Written;

/**
 * Where items go: into a bag of their kit, out of every bag, or into another kit, in which they keep their bag.
 *
 * @param bag empty where the bag stays as it is; an empty text for no bag
 */
public record Moving(Kit kit, Optional<String> bag) {

    /** The bags of a kit by name, no bag, and the other kits of the event by name. */
    public static List<Moving> placesFrom(Kit kit) {
        List<Moving> places = new ArrayList<>();
        TreeSet<String> bags = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        kit.getItems().forEach(item -> bags.add(bagOf(item)));
        bags.remove("");
        bags.forEach(bag -> places.add(new Moving(kit, Optional.of(bag))));
        places.add(new Moving(kit, Optional.of("")));
        if (kit.eContainer() instanceof Event event) {
            event.getKits().stream().filter(other -> other != kit)
                    .sorted(Comparator.comparing(other -> Written.or(other.getName(), ""), String.CASE_INSENSITIVE_ORDER))
                    .forEach(other -> places.add(new Moving(other, Optional.empty())));
        }
        return places;
    }

    /** What is there. */
    public List<KitItem> content() {
        return kit.getItems().stream().filter(item -> bag.isEmpty() || bagOf(item).equalsIgnoreCase(bag.get())).toList();
    }

    private static String bagOf(KitItem item) {
        return Written.or(item.getBag(), "").strip();
    }

    /** Those that are not there already. */
    public List<KitItem> moved(List<KitItem> items) {
        List<KitItem> there = content();
        return items.stream().filter(item -> !there.contains(item)).toList();
    }

    /** One undo; what stands in for what stays as it is. */
    public Command command(EditingDomain domain, String label, List<KitItem> items) {
        CompoundCommand all = new CompoundCommand(label);
        for (KitItem item : moved(items)) {
            if (item.eContainer() != kit) {
                all.append(RemoveCommand.create(domain, item.eContainer(), Literals.KIT__ITEMS, item));
                all.append(AddCommand.create(domain, kit, Literals.KIT__ITEMS, item));
            }
            bag.filter(name -> !name.equals(item.getBag())).ifPresent(name -> all.append(SetCommand.create(domain, item, Literals.KIT_ITEM__BAG,
                    name.isEmpty() ? SetCommand.UNSET_VALUE : name)));
        }
        return all;
    }
}
