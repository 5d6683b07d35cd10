package org.straddle.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.straddle.model.Chemistry;
import org.straddle.model.Consumable;
import org.straddle.model.InertText;
import org.straddle.model.KitItem;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/**
 * What is in which bag and what it weighs, what is used up, and which batteries an airline asks about.
 *
 * <p>Lithium batteries of passengers: up to 100 Wh each in the cabin; over 100 to 160 Wh at most two spares, with the
 * airline's approval; over 160 Wh not as baggage; spares in the cabin only, terminals covered. Passenger provisions of the
 * IATA Dangerous Goods Regulations as reprinted in the edition of 2024 of a handbook on their transport
 * (lithium.batteriestransport.org, page 35) and by aviation authorities (caa.gov.tt); advice, check the year's edition and
 * the airline.
 */
public final class Bags {

    private static final Catalogue TEXTS = Catalogue.of(Bags.class);

    /** Carried in the cabin without asking, Wh of one battery. */
    public static final double FREE_WH = 100;

    /** One piece of checked baggage on most airlines, and more than one person lifts often, kg (common practice, no source). */
    static final double HEAVY_KG = 23;

    /** The most that an airline may approve, Wh of one battery. */
    public static final double MOST_WH = 160;

    private Bags() {
    }

    /** One sentence each: bags, then cells and fuses, then batteries on a flight. */
    public static List<String> lines(List<KitItem> items) {
        List<KitItem> carried = items.stream().filter(item -> item.getCount() > 0).toList();
        List<String> lines = new ArrayList<>();
        carried.stream().filter(item -> !InertText.line(Written.or(item.getBag(), "")).isEmpty())
                .collect(Collectors.groupingBy(item -> item.getBag().strip(), TreeMap::new, Collectors.toList()))
                .forEach((bag, inside) -> lines.add(bag(bag, inside)));
        Map<String, Integer> used = new TreeMap<>();
        carried.forEach(item -> item.getConsumables().forEach(consumable -> used.merge(
                InertText.line(Written.or(consumable.getName(), TEXTS.text("bags.unnamed"))), count(item, consumable), Integer::sum)));
        used.forEach((name, count) -> lines.add(TEXTS.text("bags.consumable", "count", count, "name", name)));
        carried.stream().filter(Bags::isLithium).forEach(item -> flight(item, lines));
        if (carried.stream().anyMatch(item -> isLithium(item) && item.getStoresWh() <= MOST_WH)) {
            lines.add(TEXTS.text("bags.flight.cabin"));
        }
        return lines;
    }

    private static String bag(String bag, List<KitItem> inside) {
        double kg = inside.stream().mapToDouble(item -> item.getCount() * Amount.of(item.getWeightKg())).sum();
        long unknown = inside.stream().filter(item -> !(item.getWeightKg() > 0)).count();
        return TEXTS.text(kg > HEAVY_KG ? "bags.heavy" : "bags.bag", "bag", bag, "pieces", inside.stream().mapToInt(KitItem::getCount).sum(), "kg", kg,
                "unknown", unknown);
    }

    private static int count(KitItem item, Consumable consumable) {
        return Math.max(0, consumable.getCount()) * item.getCount();
    }

    /** What nobody wrote down might be lithium. */
    private static boolean isLithium(KitItem item) {
        return item.getStoresWh() > 0 && (item.getChemistry() == Chemistry.LITHIUM_ION
                || item.getChemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE || item.getChemistry() == Chemistry.UNKNOWN);
    }

    private static void flight(KitItem item, List<String> lines) {
        double wh = Amount.of(item.getStoresWh());
        if (wh > MOST_WH) {
            lines.add(TEXTS.text("bags.flight.never", "item", Naming.name(item), "wh", wh));
        } else if (wh > FREE_WH) {
            lines.add(TEXTS.text("bags.flight.ask", "item", Naming.name(item), "wh", wh));
        }
    }
}
