package org.straddle.kit;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.kit.team.Inventory;
import org.straddle.kit.team.SpareLoop;
import org.straddle.model.InertText;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;

/**
 * Everything one team takes along, in packing order: by role, then by name, whatever kit an item comes from. The list
 * also answers what the load weighs.
 *
 * <p>It is a value, drawn up from the kits as they are at this moment; draw up a new one after an edit.
 *
 * @param team the team's name, never null
 * @param teamNumber the team's number, 0 when it has none
 * @param rows one row for each item
 * @param spareLoops items that stand in for each other in a ring, so that nothing says which one is in use
 */
public record PackingList(String team, int teamNumber, List<PackingRow> rows, List<SpareLoop> spareLoops,
        Load load) {

    private static final Catalogue TEXTS = Catalogue.of(PackingList.class);

    public PackingList {
        rows = List.copyOf(rows);
        spareLoops = List.copyOf(spareLoops);
    }

    public static PackingList of(Team team) {
        List<PackingRow> rows = Inventory.carriedBy(team).stream().map(PackingRow::of)
                .sorted(Comparator.comparing(PackingRow::role)
                        .thenComparing(PackingRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
        List<KitItem> items = rows.stream().map(PackingRow::item).toList();
        return new PackingList(InertText.line(Written.or(team.getName(), TEXTS.text("packingList.unnamedTeam"))), team.getNumber(), rows,
                SpareLoop.in(items), Load.of(rows, team.getVehicle()));
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

    /** How many pieces, how many rows are ticked, what it weighs: one line. */
    public String summary() {
        return TEXTS.text("packingList.ticked", "items", rows.size(), "pieces", pieces(), "ticked", ticked(),
                "load", load.sentence());
    }

    /** What is odd about the list itself: one plain sentence each, the gravest first. */
    public List<String> remarks() {
        return Stream.concat(load.exceeded() ? Stream.of(load.sentence()) : Stream.empty(),
                spareLoops.stream().map(SpareLoop::sentence)).toList();
    }
}
