package org.straddle.kit.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The single pieces of a list of gear, and which of them work when only some are there. Of many equal pieces the first
 * five are enough: nothing needs more than two of a kind, and no question goes beyond three failures.
 */
final class Pieces {

    private static final int MOST_EQUAL = 5;

    private final List<Gear> gear;
    private final List<Integer> gearOfPiece = new ArrayList<>();
    /** For each gear and each of its needs: the gear that meets it. */
    private final int[][][] suppliers;

    Pieces(List<Gear> gear) {
        this.gear = List.copyOf(gear);
        suppliers = new int[gear.size()][][];
        for (int g = 0; g < gear.size(); g++) {
            for (int p = 0; p < Math.min(MOST_EQUAL, gear.get(g).pieces()); p++) {
                gearOfPiece.add(g);
            }
            int self = g;
            suppliers[g] = gear.get(g).needs().stream().map(need -> IntStream.range(0, gear.size())
                    .filter(other -> other != self && gear.get(other).gives(need)).toArray()).toArray(int[][]::new);
        }
    }

    int size() {
        return gearOfPiece.size();
    }

    Gear gear(int piece) {
        return gear.get(gearOfPiece.get(piece));
    }

    List<Gear> gear() {
        return gear;
    }

    int[] that(Predicate<Gear> wanted) {
        return IntStream.range(0, size()).filter(piece -> wanted.test(gear(piece))).toArray();
    }

    BitSet all() {
        BitSet all = new BitSet();
        all.set(0, size());
        return all;
    }

    /** Which pieces work when only these are there: the least fixpoint of what supplies what. */
    boolean[] working(BitSet there) {
        return fixpoint(there, false);
    }

    /** Gear that works only if it supplies itself by way of others, so never. */
    List<Gear> circular() {
        boolean[] least = fixpoint(all(), false);
        boolean[] greatest = fixpoint(all(), true);
        return IntStream.range(0, size()).filter(piece -> !least[piece] && (greatest[piece] || needsItself(piece)))
                .mapToObj(this::gear).distinct().toList();
    }

    /** Is there a need that it alone would meet? */
    private boolean needsItself(int piece) {
        int g = gearOfPiece.get(piece);
        List<Ability> needs = gear.get(g).needs();
        return IntStream.range(0, needs.size())
                .anyMatch(need -> suppliers[g][need].length == 0 && gear.get(g).gives(needs.get(need)));
    }

    private boolean[] fixpoint(BitSet there, boolean from) {
        boolean[] present = new boolean[gear.size()];
        for (int piece = there.nextSetBit(0); piece >= 0; piece = there.nextSetBit(piece + 1)) {
            present[gearOfPiece.get(piece)] = true;
        }
        boolean[] supplied = new boolean[gear.size()];
        for (int g = 0; g < supplied.length; g++) {
            supplied[g] = present[g] && (from || suppliers[g].length == 0);
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int g = 0; g < supplied.length; g++) {
                if (present[g] && supplied[g] == from && isSupplied(g, supplied) != from) {
                    supplied[g] = !from;
                    changed = true;
                }
            }
        }
        boolean[] works = new boolean[size()];
        for (int piece = there.nextSetBit(0); piece >= 0; piece = there.nextSetBit(piece + 1)) {
            works[piece] = supplied[gearOfPiece.get(piece)];
        }
        return works;
    }

    private boolean isSupplied(int g, boolean[] supplied) {
        for (int[] need : suppliers[g]) {
            boolean met = false;
            for (int i = 0; !met && i < need.length; i++) {
                met = supplied[need[i]];
            }
            if (!met) {
                return false;
            }
        }
        return true;
    }
}
