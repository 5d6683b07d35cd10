package org.straddle.kit;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.straddle.kit.team.Inventory;
import org.straddle.model.InertText;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;

/**
 * Everything one team takes along, in packing order: by role, then by name, whatever kit an item comes from. The list
 * also answers what the load weighs, how long the batteries last, which modes of work the kit covers, and which item
 * would end a mode by failing alone.
 *
 * <p>It is a value, drawn up from the kits as they are at this moment; draw up a new one after an edit.
 *
 * @param team the team's name, never null
 * @param teamNumber the team's number, 0 when it has none
 * @param rows one row for each item
 * @param modes one entry for each mode of work, covered or not
 * @param spareLoops items that stand in for each other in a ring, so that nothing says which one is in use
 */
public record PackingList(String team, int teamNumber, List<PackingRow> rows, List<ModeCover> modes,
        List<SpareLoop> spareLoops, Load load, Energy energy) {

    private static final Catalogue TEXTS = Catalogue.of(PackingList.class);

    public PackingList {
        rows = List.copyOf(rows);
        modes = List.copyOf(modes);
        spareLoops = List.copyOf(spareLoops);
    }

    public static PackingList of(Team team) {
        List<PackingRow> rows = Inventory.carriedBy(team).stream().map(PackingRow::of)
                .sorted(Comparator.comparing(PackingRow::role)
                        .thenComparing(PackingRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
        List<KitItem> items = rows.stream().map(PackingRow::item).toList();
        return new PackingList(InertText.line(Written.or(team.getName(), TEXTS.text("packingList.unnamedTeam"))), team.getNumber(), rows,
                WorkMode.VALUES.stream().map(mode -> ModeCover.of(mode, items)).toList(), SpareLoop.in(items),
                Load.of(rows, team.getVehicle()), Energy.of(items));
    }

    /** Does the team take nothing along? */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Pieces to carry, counting every one of several. */
    public int pieces() {
        return rows.stream().mapToInt(PackingRow::count).sum();
    }

    /** Rows that somebody saw in the car. */
    public int ticked() {
        return (int) rows.stream().filter(row -> row.packed().isPresent()).count();
    }

    /** Items whose failure alone stops a mode of work that the kit covers, each with the modes it stops. */
    public List<SinglePoint> singlePoints() {
        Map<KitItem, Set<WorkMode>> stops = new LinkedHashMap<>();
        for (ModeCover mode : modes) {
            for (KitItem item : mode.singlePoints()) {
                stops.computeIfAbsent(item, any -> EnumSet.noneOf(WorkMode.class)).add(mode.mode());
            }
        }
        return rows.stream().map(PackingRow::item).filter(stops::containsKey)
                .map(item -> new SinglePoint(item, stops.get(item))).toList();
    }

    /** How many pieces, how many rows are ticked, what it weighs: one line. */
    public String summary() {
        return TEXTS.text("packingList.ticked", "items", rows.size(), "pieces", pieces(), "ticked", ticked(),
                "load", load.sentence());
    }

    /** What somebody who packs should know besides the rows: one plain sentence each, the gravest first. */
    public List<String> remarks() {
        return Stream.of(
                load.exceeded() ? List.of(load.sentence()) : List.<String>of(),
                singlePoints().stream().map(SinglePoint::sentence).toList(),
                modes.stream().filter(mode -> !mode.covered()).map(ModeCover::sentence).toList(),
                spareLoops.stream().map(SpareLoop::sentence).toList())
                .flatMap(List::stream).toList();
    }
}
