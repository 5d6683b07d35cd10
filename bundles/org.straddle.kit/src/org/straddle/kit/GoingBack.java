package org.straddle.kit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.straddle.kit.team.Inventory;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Team;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/**
 * What a team brings back to one owner after the event. Club stock without an owner belongs to the club.
 *
 * @param items in packing order
 */
public record GoingBack(String owner, List<KitItem> items) {

    private static final Catalogue TEXTS = Catalogue.of(GoingBack.class);

    public GoingBack {
        items = List.copyOf(items);
    }

    /** One for each owner, by name. */
    public static List<GoingBack> of(Team team) {
        Map<String, List<KitItem>> byOwner = Inventory.carriedBy(team).stream()
                .filter(item -> item.getCount() > 0 && !owner(item).isEmpty())
                .collect(Collectors.groupingBy(GoingBack::owner, TreeMap::new, Collectors.toList()));
        return byOwner.entrySet().stream().map(entry -> new GoingBack(entry.getKey(), entry.getValue())).toList();
    }

    private static String owner(KitItem item) {
        String named = InertText.line(Written.or(item.getOwner(), ""));
        return named.isEmpty() && item.eContainer() instanceof Kit kit && kit.getSource() == KitSource.CLUB_STOCK
                ? InertText.line(Written.or(kit.eContainer() instanceof Event event ? event.getClub() : "", TEXTS.text("goingBack.club"))) : named;
    }

    /** What nobody has ticked as returned. */
    public List<KitItem> still() {
        return items.stream().filter(item -> item.getReturned() == null).toList();
    }

    /** {@code To the club: 1 × South second battery, 2 × headset.} */
    public String sentence() {
        return TEXTS.text(still().isEmpty() ? "goingBack.back" : "goingBack.still", "owner", owner, "items",
                (still().isEmpty() ? items : still()).stream()
                        .map(item -> TEXTS.text("goingBack.item", "count", item.getCount(), "item", Naming.name(item))).toList());
    }
}
