package org.straddle.kit.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Minimal cut sets against published fault trees and against trying everything. */
class CutSetsTest {

    /**
     * W. E. Vesely et al., Fault Tree Handbook, NUREG-0492 (1981), chapter VII, the first worked tree of the section on
     * minimal cut sets: T = E1·E2, E1 = A + E3, E3 = B + C, E2 = C + E4, E4 = A·B. The handbook finds C and A·B.
     * Tree and result from memory; the number of the figure is not remembered, and the pages could not be read.
     */
    @Test
    void theHandbooksFirstTree() {
        assertEquals("[C, AB]", cuts("ABC", failed -> {
            boolean a = failed.get(0);
            boolean b = failed.get(1);
            boolean c = failed.get(2);
            return (a || b || c) && (c || a && b);
        }));
    }

    /**
     * The pressure tank of NUREG-0492, chapter VIII, and of the NASA Fault Tree Handbook with Aerospace Applications (2002):
     * E1 = T + E2, E2 = K2 + E3, E3 = S·E4, E4 = S1 + E5, E5 = K1 + R. The cut sets T, K2, S·S1, S·K1 and S·R are from memory.
     * Tree and probabilities of the NASA handbook were read at second hand, not in its pages, with this for the top
     * event 3.5013348120867e-5 (exact, by another program than ours). Here R is r, S1 is s, K1 is k and K2 is K.
     */
    @Test
    void theHandbooksPressureTank() {
        Predicate<BitSet> tank = failed -> {
            boolean e5 = failed.get(4) || failed.get(5);
            boolean e4 = failed.get(3) || e5;
            boolean e3 = failed.get(2) && e4;
            return failed.get(0) || failed.get(1) || e3;
        };
        assertEquals("[T, K, Ss, Sk, Sr]", cuts("TKSskr", tank));
        assertEquals(3.5013348120867e-5, topEvent("TKSskr", tank, 5e-6, 3e-5, 1e-4, 3e-5, 5e-6, 1e-4), 1e-11);
    }

    /**
     * The redundant seal of the NASA handbook: it leaks by the metal seal, both compression seals and the plug together, or when
     * the tape is contaminated and the common cause comes. Read at second hand too, with 1.000000999999e-6 for the leak.
     */
    @Test
    void theHandbooksSeal() {
        Predicate<BitSet> seal = failed -> all(failed, 0, 1) || all(failed, 2, 3, 4, 5);
        assertEquals("[TC, MPAB]", cuts("TCMPAB", seal));
        assertEquals(1.000000999999e-6, topEvent("TCMPAB", seal, 0.1, 1e-5, 1e-3, 1e-3, 1e-3, 1e-3), 1e-17);
    }

    /** From the cut sets alone: the chance that all of one of them has failed, over every state of the pieces. */
    private static double topEvent(String names, Predicate<BitSet> top, double... probabilities) {
        List<BitSet> cuts = cutSets(names.length(), top);
        double sum = 0;
        for (long state = 0; state < 1L << names.length(); state++) {
            BitSet failed = BitSet.valueOf(new long[] { state });
            if (cuts.stream().anyMatch(cut -> cut.stream().allMatch(failed::get))) {
                double chance = 1;
                for (int piece = 0; piece < probabilities.length; piece++) {
                    chance *= failed.get(piece) ? probabilities[piece] : 1 - probabilities[piece];
                }
                sum += chance;
            }
        }
        return sum;
    }

    /**
     * W. E. Vesely, A time-dependent methodology for fault tree evaluation, Nuclear Engineering and Design 13 (1970) 337–360,
     * figure 1: ten events in twenty gates. The tree was read at second hand, not in the paper; the cut sets
     * follow by hand, because two of 1, 2, 3 or two of 4, 5, 6 absorb all else. Here 10 is x.
     */
    @Test
    void veselysTree() {
        assertEquals("[12, 13, 23, 45, 46, 56]", cuts("123456789x", failed -> {
            boolean g3 = all(failed, 0, 1) || all(failed, 0, 2) || all(failed, 1, 2);
            boolean g10 = all(failed, 0, 1) && any(failed, 8, 9);
            boolean g11 = any(failed, 6, 7, 8) && (all(failed, 0, 1, 2) || all(failed, 3, 4, 5));
            boolean g5 = all(failed, 3, 4) || all(failed, 3, 5) || all(failed, 4, 5);
            boolean g6 = any(failed, 6, 7) && g3;
            return g3 || g10 || g11 || g5 || g6;
        }));
    }

    private static boolean any(BitSet failed, int... events) {
        return IntStream.of(events).anyMatch(failed::get);
    }

    private static boolean all(BitSet failed, int... events) {
        return IntStream.of(events).allMatch(failed::get);
    }

    /** Two out of three: each pair is a cut, no single one is. */
    @Test
    void twoOutOfThree() {
        assertEquals("[AB, AC, BC]", cuts("ABC", failed -> failed.cardinality() >= 2));
    }

    @Test
    void randomMonotoneConditionsAgainstTryingEverything() {
        Random random = new Random(20270618);
        for (int round = 0; round < 400; round++) {
            int size = 1 + random.nextInt(9);
            List<BitSet> enough = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(6); i++) {
                BitSet path = new BitSet();
                for (int piece = 0; piece < size; piece++) {
                    path.set(piece, random.nextInt(3) == 0);
                }
                enough.add(path);
            }
            Condition condition = there -> enough.stream().anyMatch(path -> {
                BitSet lacking = (BitSet) path.clone();
                lacking.andNot(there);
                return lacking.isEmpty();
            });
            BitSet all = new BitSet();
            all.set(0, size);
            for (int order = 1; order <= 3; order++) {
                assertEquals(tried(condition, size, order), new TreeSet<>(CutSets.of(condition, all, order).stream()
                        .map(BitSet::toString).toList()), "round " + round);
            }
        }
    }

    private static TreeSet<String> tried(Condition condition, int size, int order) {
        TreeSet<String> found = new TreeSet<>();
        if (!condition.holds(BitSet.valueOf(new long[] { (1L << size) - 1 }))) {
            return found;
        }
        for (long cut = 1; cut < 1L << size; cut++) {
            if (Long.bitCount(cut) <= order && !holdsWithout(condition, size, cut)) {
                boolean minimal = true;
                for (int piece = 0; piece < size; piece++) {
                    minimal &= (cut >> piece & 1) == 0 || holdsWithout(condition, size, cut & ~(1L << piece));
                }
                if (minimal) {
                    found.add(BitSet.valueOf(new long[] { cut }).toString());
                }
            }
        }
        return found;
    }

    private static boolean holdsWithout(Condition condition, int size, long cut) {
        return condition.holds(BitSet.valueOf(new long[] { (1L << size) - 1 & ~cut }));
    }

    private static String cuts(String names, Predicate<BitSet> top) {
        return cutSets(names.length(), top).stream()
                .map(cut -> cut.stream().mapToObj(piece -> names.substring(piece, piece + 1)).collect(Collectors.joining()))
                .toList().toString();
    }

    private static List<BitSet> cutSets(int pieces, Predicate<BitSet> top) {
        BitSet all = new BitSet();
        all.set(0, pieces);
        Condition condition = there -> {
            BitSet failed = (BitSet) all.clone();
            failed.andNot(there);
            return !top.test(failed);
        };
        return CutSets.of(condition, all, pieces);
    }
}
