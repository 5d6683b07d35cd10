package org.straddle.kit.team;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.kit.work.Ability;
import org.straddle.kit.work.Function;
import org.straddle.kit.work.Gear;
import org.straddle.kit.work.Work;
import org.straddle.model.Event;
import org.straddle.model.ItemFunction;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;
import org.straddle.model.naming.Naming;

/**
 * What a team carries, and what it could still get, as gear.
 *
 * <p>An item that does not say what it does gives what its role says, on every band: a radio transmits, receives and has a
 * push-to-talk key; an antenna, a feedline and a power supply are what they are; a computer records too; a navigation
 * receiver gives position and time. What stores energy gives power. So kits of older files mean what they meant.
 */
public final class Inventory {

    private final Map<Gear, KitItem> items = new LinkedHashMap<>();
    private final List<Gear> carried = new ArrayList<>();
    private final List<Gear> offered = new ArrayList<>();

    private Inventory() {
    }

    public static Inventory of(Team team) {
        Inventory inventory = new Inventory();
        carriedBy(team).forEach(item -> inventory.carried.add(inventory.gear(item)));
        kits(team).filter(kit -> kit.getSource() != KitSource.CARRIED && !team.getKits().contains(kit))
                .flatMap(kit -> kit.getItems().stream()).filter(item -> item.getLentTo() == null)
                .forEach(item -> inventory.offered.add(inventory.gear(item)));
        return inventory;
    }

    /** The items of its kits, and what the club lends it. */
    public static List<KitItem> carriedBy(Team team) {
        return Stream.concat(
                team.getKits().stream().filter(kit -> !kit.eIsProxy()).distinct().flatMap(kit -> kit.getItems().stream())
                        .filter(item -> item.getLentTo() == null || item.getLentTo() == team),
                kits(team).filter(kit -> !team.getKits().contains(kit)).flatMap(kit -> kit.getItems().stream())
                        .filter(item -> item.getLentTo() == team)).toList();
    }

    private static Stream<Kit> kits(Team team) {
        return team.eContainer() instanceof Event event ? event.getKits().stream() : Stream.empty();
    }

    public List<Gear> carried() {
        return List.copyOf(carried);
    }

    /** Club stock that nobody has yet, and what could be bought. */
    public List<Gear> offered() {
        return List.copyOf(offered);
    }

    /** The item behind gear that came from here; what is offered may come back without its mark. */
    public Optional<KitItem> item(Gear gear) {
        return Optional.ofNullable(items.get(gear)).or(() -> items.entrySet().stream()
                .filter(entry -> entry.getKey().id().equals(gear.id())).map(Map.Entry::getValue).findFirst());
    }

    /** Items as gear, wherever they are. */
    public static Map<Gear, KitItem> gear(List<KitItem> items) {
        Inventory inventory = new Inventory();
        items.forEach(inventory::gear);
        return inventory.items;
    }

    private Gear gear(KitItem item) {
        Gear gear = new Gear(String.valueOf(item.getId()), Naming.name(item), item.getCount(), gives(item),
                item.getNeeds().stream().map(Inventory::ability).toList(), item.isDuplex(), works(item), item.isNeeded(),
                Optional.ofNullable(item.getSpareFor()).map(other -> String.valueOf(other.getId())),
                (long) Math.ceil(100 * amount(item.getPrice())), Math.round(1000 * amount(item.getWeightKg())));
        items.put(gear, item);
        return gear;
    }

    private static double amount(double value) {
        return value > 0 && value < 1e9 ? value : 0;
    }

    private static Set<Work> works(KitItem item) {
        return item.getModes().stream().flatMap(mode -> works(mode).stream()).collect(Collectors.toSet());
    }

    private static List<Work> works(WorkMode mode) {
        return switch (mode) {
            case FM -> List.of(Work.FM, Work.HANDHELD_VOICE);
            case LINEAR -> List.of(Work.LINEAR_FULL_DUPLEX, Work.LINEAR_HALF_DUPLEX);
            case DATA -> List.of(Work.DATA);
        };
    }

    private static List<Ability> gives(KitItem item) {
        List<Ability> gives = new ArrayList<>();
        if (item.getFunctions().isEmpty()) {
            byRole(item).forEach(function -> gives.add(Ability.of(function)));
        }
        item.getFunctions().forEach(function -> gives.add(ability(function)));
        if (item.getStoresWh() > 0 && gives.stream().noneMatch(given -> given.function() == Function.POWER)) {
            gives.add(Ability.of(Function.POWER));
        }
        return gives;
    }

    private static List<Function> byRole(KitItem item) {
        return switch (item.getRole()) {
            case RADIO -> List.of(Function.TRANSMIT, Function.RECEIVE, Function.PUSH_TO_TALK);
            case ANTENNA -> List.of(Function.ANTENNA);
            case FEEDLINE -> List.of(Function.FEED_LINE);
            case POWER -> List.of(Function.POWER);
            case COMPUTER -> List.of(Function.COMPUTER, Function.RECORDING);
            case RECORDER -> List.of(Function.RECORDING);
            case NAVIGATION -> List.of(Function.POSITION, Function.TIME);
            case AUDIO -> List.of(Function.HEADSET);
            case SAFETY, TOOL, COMFORT -> List.of();
        };
    }

    private static Ability ability(ItemFunction function) {
        return new Ability(Function.valueOf(function.getKind().name()),
                function.getBands().stream().filter(band -> band != null).collect(Collectors.toSet()), function.getFit());
    }
}
