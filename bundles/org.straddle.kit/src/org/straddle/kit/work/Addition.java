package org.straddle.kit.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * What to add to a kit so that no single failure stops any of some tasks.
 *
 * @param gear   what to add, one entry for each piece
 * @param proven is no other addition cheaper, or as cheap and lighter? False when time ran out
 */
public record Addition(List<Gear> gear, Cost cost, boolean proven) {

    /** A requirement needs two of a kind at most, and one of those may fail. */
    private static final int MOST_OF_A_KIND = 3;

    public Addition {
        gear = List.copyOf(gear);
    }

    /** @return empty when even with everything on offer a single failure stops a task, or it cannot be done */
    public static Optional<Addition> cheapest(List<Task> tasks, List<Gear> kit, List<Gear> offer, Duration limit) {
        return new Search(tasks, kit, offer, System.nanoTime() + limit.toNanos()).run();
    }

    /** Implicit hitting sets: see the page of the package. */
    private static final class Search {

        private final Pieces pieces;
        private final List<Condition> conditions;
        private final BitSet carried = new BitSet();
        private final BitSet offered = new BitSet();
        private final BooleanSupplier late;

        Search(List<Task> tasks, List<Gear> kit, List<Gear> offer, long end) {
            List<Gear> all = new ArrayList<>(kit);
            all.addAll(cheapestOfEachKind(offer));
            pieces = new Pieces(all);
            conditions = tasks.stream().map(task -> Condition.of(Demands.of(task, pieces, kit.size()), pieces)).toList();
            carried.set(0, new Pieces(kit).size());
            offered.set(carried.length(), pieces.size());
            late = () -> System.nanoTime() > end;
        }

        /** What equals another in all but price and weight is taken in the order of its cost. */
        private static List<Gear> cheapestOfEachKind(List<Gear> offer) {
            Map<Object, Integer> taken = new HashMap<>();
            List<Gear> kept = new ArrayList<>();
            offer.stream().map(Gear::unmarked).sorted(Comparator.comparing(Cost::of)).forEach(gear -> {
                int before = taken.merge(gear.kind(), gear.pieces(), Integer::sum) - gear.pieces();
                if (before < MOST_OF_A_KIND) {
                    kept.add(gear);
                }
            });
            return kept;
        }

        Optional<Addition> run() {
            if (weakness(offered).isPresent()) {
                return Optional.empty();
            }
            Cost[] costs = new Cost[pieces.size()];
            offered.stream().forEach(piece -> costs[piece] = Cost.of(pieces.gear(piece)));
            List<BitSet> cores = new ArrayList<>();
            while (!late.getAsBoolean()) {
                BitSet chosen = HittingSet.cheapest(cores, costs, late);
                if (chosen == null) {
                    break;
                }
                Optional<Weakness> weakness = weakness(chosen);
                if (weakness.isEmpty()) {
                    return Optional.of(addition(chosen, costs, true));
                }
                cores.add(core(weakness.get(), chosen));
            }
            return Optional.of(addition(good(costs), costs, false));
        }

        /** What the chosen pieces leave weak: a condition that fails, with or without one failure. */
        private Optional<Weakness> weakness(BitSet chosen) {
            BitSet there = (BitSet) carried.clone();
            there.or(chosen);
            for (Condition condition : conditions) {
                if (!condition.holds(there)) {
                    return Optional.of(new Weakness(condition, -1));
                }
                List<BitSet> single = CutSets.of(condition, there, 1);
                if (!single.isEmpty()) {
                    return Optional.of(new Weakness(condition, single.get(0).nextSetBit(0)));
                }
            }
            return Optional.empty();
        }

        /** All that is left out of a largest choice with the same weakness: every remedy has one of these. */
        private BitSet core(Weakness weakness, BitSet chosen) {
            BitSet there = (BitSet) carried.clone();
            there.or(chosen);
            BitSet core = (BitSet) offered.clone();
            core.andNot(chosen);
            for (int piece = offered.nextSetBit(0); piece >= 0; piece = offered.nextSetBit(piece + 1)) {
                if (core.get(piece)) {
                    there.set(piece);
                    if (weakness.gone(there)) {
                        there.clear(piece);
                    } else {
                        core.clear(piece);
                    }
                }
            }
            return core;
        }

        /** A choice that does, made by leaving out the dearest first; not the cheapest. */
        private BitSet good(Cost[] costs) {
            BitSet good = (BitSet) offered.clone();
            offered.stream().boxed().sorted((a, b) -> costs[b].compareTo(costs[a])).forEach(piece -> {
                good.clear(piece);
                if (weakness(good).isPresent()) {
                    good.set(piece);
                }
            });
            return good;
        }

        private Addition addition(BitSet chosen, Cost[] costs, boolean proven) {
            return new Addition(chosen.stream().mapToObj(pieces::gear).toList(),
                    chosen.stream().mapToObj(piece -> costs[piece]).reduce(Cost.NOTHING, Cost::plus), proven);
        }
    }

    /** A condition that fails when this piece does; -1 for one that fails anyway. */
    private record Weakness(Condition condition, int failed) {

        boolean gone(BitSet there) {
            BitSet left = (BitSet) there.clone();
            if (failed >= 0) {
                left.clear(failed);
            }
            return condition.holds(left);
        }
    }
}
