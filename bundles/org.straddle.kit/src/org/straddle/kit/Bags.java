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
 * the airline. A passenger carries at most 20 spares and 15 devices unless the airline allows more: IATA, Passengers
 * Travelling with Lithium Batteries, 2018, and a table after the 66th edition of the regulations, 2025, both read in excerpts.
 */
public final class Bags {

    private static final Catalogue TEXTS = Catalogue.of(Bags.class);

    /** Carried in the cabin without asking, Wh of one battery. */
    public static final double FREE_WH = 100;

    /** One piece of checked baggage on most airlines, and more than one person lifts often, kg (common practice, no source). */
    static final double HEAVY_KG = 23;

    /** The most that an airline may approve, Wh of one battery. */
    public static final double MOST_WH = 160;

    /** Spares of one passenger, and devices with a battery; the airline may allow more. */
    static final int MOST_SPARES = 20;
    static final int MOST_DEVICES = 15;

    /** Spares over 100 Wh of one passenger. */
    static final int MOST_LARGE_SPARES = 2;

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
        shared(carried, lines);
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

    /** What one passenger may not carry alone. What stores and draws is a device; what only stores is a spare. */
    private static void shared(List<KitItem> carried, List<String> lines) {
        List<KitItem> cabin = carried.stream().filter(item -> isLithium(item) && item.getStoresWh() <= MOST_WH).toList();
        int devices = pieces(cabin.stream().filter(Bags::draws).toList());
        int spares = pieces(cabin.stream().filter(item -> !draws(item)).toList());
        int large = pieces(cabin.stream().filter(item -> !draws(item) && item.getStoresWh() > FREE_WH).toList());
        if (spares > MOST_SPARES || devices > MOST_DEVICES || large > MOST_LARGE_SPARES) {
            lines.add(TEXTS.text("bags.flight.share", "spares", spares, "large", large, "devices", devices, "mostSpares", MOST_SPARES,
                    "mostLarge", MOST_LARGE_SPARES, "mostDevices", MOST_DEVICES));
        }
    }

    private static int pieces(List<KitItem> items) {
        return items.stream().mapToInt(KitItem::getCount).sum();
    }

    private static boolean draws(KitItem item) {
        return item.getDrawsW() > 0 || item.getTransmitDrawsW() > 0 || item.getReceiveDrawsW() > 0 || item.getIdleDrawsW() > 0;
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
