package org.straddle.kit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.kit.team.Inventory;
import org.straddle.model.KitItem;
import org.straddle.model.Stop;
import org.straddle.model.StopTick;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.words.Catalogue;

/**
 * What somebody saw in the car again before the team left a stop.
 *
 * @param last    the newest tick
 * @param missing what nobody has ticked there
 */
public record InCar(Stop stop, int seen, StopTick last, List<KitItem> missing) {

    private static final Catalogue TEXTS = Catalogue.of(InCar.class);

    private static final int MOST_NAMES = 6;

    public InCar {
        missing = List.copyOf(missing);
    }

    /** One for each stop at which anything is ticked, in the order of the plan. */
    public static List<InCar> of(Team team, Itinerary itinerary) {
        List<KitItem> carried = Inventory.carriedBy(team).stream().filter(item -> item.getCount() > 0).toList();
        return itinerary.of(team).stream().flatMap(stay -> of(stay.stop(), carried).stream()).toList();
    }

    private static Optional<InCar> of(Stop stop, List<KitItem> carried) {
        Optional<StopTick> last = carried.stream().flatMap(item -> tick(item, stop).stream())
                .max(Comparator.comparing(StopTick::getAt, Comparator.nullsFirst(Comparator.naturalOrder())));
        List<KitItem> missing = carried.stream().filter(item -> tick(item, stop).isEmpty()).toList();
        return last.map(tick -> new InCar(stop, carried.size() - missing.size(), tick, missing));
    }

    /** The tick of an item at a stop. */
    public static Optional<StopTick> tick(KitItem item, Stop stop) {
        return item.getInCar().stream().filter(tick -> tick.getStop() != null && tick.getStop().getId().equals(stop.getId())).findFirst();
    }

    /** {@code In the car again at Old pier: 12 of 14, the last by Q0AAR. Nobody ticked: lantern, rope.} */
    public String sentence() {
        return TEXTS.text("inCar.sentence", "site", stop.getSite() == null ? "" : Naming.name(stop.getSite()), "seen", seen,
                "all", seen + missing.size(), "by", last.getBy() == null ? "" : last.getBy(), "missing", missing.size(),
                "names", missing.stream().limit(MOST_NAMES).map(item -> Naming.name(item)).toList(),
                "more", Math.max(0, missing.size() - MOST_NAMES));
    }
}
