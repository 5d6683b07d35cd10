package org.straddle.kit.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.straddle.kit.work.Requirement.Kind;

/** What kits can do and what ends it. */
class AnswerTest {

    private static final Task FM = new Task(Work.FM, "2m", "70cm");
    private static final Task FULL = new Task(Work.LINEAR_FULL_DUPLEX, "2m", "70cm");
    private static final String RADIO = "rig tx@2m,70cm rx@2m,70cm push_to_talk; cable feed_line; battery power; ";

    @Test
    void anAntennaForOneBandDoesNotServeABirdThatNeedsTwo() {
        Answer one = answer(FM, RADIO + "whip antenna@2m");
        assertEquals(List.of(new Requirement(Kind.ANTENNA, "70cm", "")), one.missing());
        assertTrue(one.single().isEmpty());
        assertTrue(answer(FM, RADIO + "whip antenna@2m; stick antenna@70cm").possible());
    }

    @Test
    void aDualBandAntennaServesTwoFunctionsAndIsASinglePoint() {
        assertEquals("battery beam cable rig", Shed.cuts(answer(FM, RADIO + "beam antenna@2m,70cm")));
    }

    @Test
    void aSecondAntennaForOneBandLeavesTheOther() {
        assertEquals("battery beam cable rig", Shed.cuts(answer(FM, RADIO + "beam antenna@2m,70cm; whip antenna@2m")));
        assertEquals("battery cable rig; beam+stick beam+whip",
                Shed.cuts(answer(FM, RADIO + "beam antenna@2m,70cm; whip antenna@2m; stick antenna@70cm")));
    }

    @Test
    void fullDuplexNeedsTwoRadiosOrOneDuplexRadio() {
        String rest = "cable feed_line x2; battery power; beam antenna@2m,70cm; ";
        assertEquals(List.of(Kind.TWO_RADIOS), kinds(answer(FULL, rest + "rig tx@2m rx@70cm push_to_talk")));
        assertTrue(answer(FULL, rest + "rig tx@2m rx@70cm push_to_talk duplex").possible());
        assertTrue(answer(FULL, rest + "rig tx@2m,70cm rx@2m,70cm push_to_talk x2").possible());
        assertTrue(answer(FULL, rest + "up tx@2m push_to_talk; down rx@70cm").possible());
        assertEquals("battery beam cable down up", Shed.cuts(answer(FULL, rest + "up tx@2m push_to_talk; down rx@70cm")));
    }

    @Test
    void twoRadiosNeedTwoFeedLinesOrADiplexer() {
        String radios = "rig tx rx push_to_talk x2; battery power; beam antenna; ";
        assertEquals(List.of(Kind.TWO_FEED_LINES), kinds(answer(FULL, radios + "cable feed_line")));
        assertTrue(answer(FULL, radios + "cable feed_line; box diplexer@2m,70cm").possible());
        assertTrue(answer(FULL, radios + "cable feed_line x2").possible());
    }

    @Test
    void whatARadioNeedsFailsWithIt() {
        String kit = "rig tx rx needs:push_to_talk=K2; switch push_to_talk=K2; mic push_to_talk=RJ; cable feed_line;"
                + "beam antenna; battery power";
        assertEquals("battery beam cable rig switch", Shed.cuts(answer(FM, kit)));
        assertEquals("battery beam cable rig; spare+switch", Shed.cuts(answer(FM, kit + "; spare push_to_talk=k2")));
    }

    @Test
    void voltageMustFit() {
        String kit = "rig tx rx push_to_talk needs:power=12V; cable feed_line; beam antenna; ";
        assertFalse(answer(FM, kit + "pack power=7.4V").possible());
        assertTrue(answer(FM, kit + "pack power=12V").possible());
    }

    @Test
    void thingsThatOnlySupplyEachOtherNeverWork() {
        Answer answer = answer(FM, "rig tx rx push_to_talk power needs:adapter; plug adapter needs:power=A; cable feed_line;"
                + "beam antenna");
        assertEquals(List.of("rig", "plug"), answer.circular().stream().map(Gear::name).toList());
        assertFalse(answer.possible());
        assertFalse(answer(FM, "rig tx rx push_to_talk power needs:power; cable feed_line; beam antenna").possible());
    }

    @Test
    void aPairOfTheSameThing() {
        assertEquals("beam cable rig; battery+battery", Shed.cuts(answer(FM, "rig tx rx push_to_talk; cable feed_line;"
                + "battery power x2; beam antenna")));
    }

    @Test
    void markedAsNeededMeansItOrItsSpare() {
        String kit = RADIO + "beam antenna; lamp ! support";
        assertTrue(Shed.cuts(answer(FM, kit)).contains("lamp"));
        assertEquals("battery beam cable rig; lamp+torch", Shed.cuts(answer(FM, kit + "; torch ->lamp")));
    }

    @Test
    void aHandheldCarriesItsOwnBattery() {
        Task voice = new Task(Work.HANDHELD_VOICE, "2m", "70cm");
        assertEquals("handheld whip", Shed.cuts(answer(voice, "handheld tx rx push_to_talk power; whip antenna@2m,70cm")));
        assertFalse(answer(voice, "handheld tx rx push_to_talk; pack power; whip antenna").possible());
    }

    @Test
    void gearThatIsNotForTheModeDoesNotHelp() {
        assertEquals("cable", Shed.cuts(answer(new Task(Work.FM, "", ""),
                "a tx rx push_to_talk x9; cable feed_line; p power x9; b antenna x9; c2 feed_line data")));
    }

    /** Whatever is there: cuts agree with trying every one and every two pieces, and idle gear changes nothing. */
    @Test
    void randomKitsAgainstTryingEverything() {
        Random random = new Random(19);
        String[] parts = { "tx@2m rx@2m", "tx rx push_to_talk", "rx@70cm", "antenna@2m", "antenna@70cm", "antenna feed_line",
                "power", "push_to_talk=K", "tx rx duplex needs:push_to_talk=K", "feed_line x2", "power needs:adapter",
                "adapter", "power=12V x3", "tx rx push_to_talk needs:power=12V", "diplexer", "antenna !", "feed_line ->g0" };
        int possible = 0;
        for (int round = 0; round < 600; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 4 + random.nextInt(9); i++) {
                text.append(i == 0 ? "" : ";").append("g" + i + " ").append(parts[random.nextInt(parts.length)]);
            }
            List<Gear> kit = Shed.of(text.toString());
            Task task = random.nextBoolean() ? FM : FULL;
            Answer answer = Answer.of(task, kit);
            possible += answer.possible() ? 1 : 0;
            assertEquals(tried(task, kit), new TreeSet<>(List.of(Shed.cuts(answer).split("; | "))), text.toString());
            for (Gear gear : kit) {
                List<Gear> less = new ArrayList<>(kit);
                less.set(kit.indexOf(gear), fewer(gear));
                if (answer.possible() && !answer.matters().contains(gear)) {
                    assertEquals(Shed.cuts(answer), Shed.cuts(Answer.of(task, less)), text + " - " + gear.name());
                }
            }
        }
        assertTrue(possible > 40, "kits that work: " + possible);
    }

    private static TreeSet<String> tried(Task task, List<Gear> kit) {
        Pieces pieces = new Pieces(kit);
        Map<Requirement, Formula> demands = Demands.of(task, pieces);
        TreeSet<String> found = new TreeSet<>();
        if (!holds(demands, pieces, -1, -1)) {
            found.add("");
            return found;
        }
        for (int a = 0; a < pieces.size(); a++) {
            if (!holds(demands, pieces, a, -1)) {
                found.add(pieces.gear(a).name());
            }
            for (int b = 0; b < a; b++) {
                if (!holds(demands, pieces, a, b) && holds(demands, pieces, a, -1) && holds(demands, pieces, b, -1)) {
                    found.add(String.join("+", new TreeSet<>(List.of(pieces.gear(a).name() + " ", pieces.gear(b).name())))
                            .replace(" ", ""));
                }
            }
        }
        if (found.isEmpty() || found.stream().allMatch(cut -> cut.contains("+"))) {
            found.add("");
        }
        return found;
    }

    private static boolean holds(Map<Requirement, Formula> demands, Pieces pieces, int a, int b) {
        BitSet there = pieces.all();
        if (a >= 0) {
            there.clear(a);
        }
        if (b >= 0) {
            there.clear(b);
        }
        boolean[] works = pieces.working(there);
        return demands.values().stream().allMatch(demand -> demand.holds(works));
    }

    /** The question is exact for 300 items in under a second; the bound here is wide, for a busy machine. */
    @Test
    void threeHundredItems() {
        StringBuilder text = new StringBuilder("g0 tx rx push_to_talk needs:power=12V");
        String[] parts = { "tx rx push_to_talk needs:power=12V", "antenna@2m needs:support", "antenna@70cm needs:support",
                "support", "feed_line", "power=12V", "recording", "headset needs:adapter", "adapter", "position" };
        for (int i = 1; i < 300; i++) {
            text.append(";g" + i + " ").append(parts[i < 20 ? i % 10 : 6 + i % 4]);
        }
        List<Gear> kit = Shed.of(text.toString());
        long start = System.nanoTime();
        Answer answer = Answer.of(FULL, kit);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf("300 items: %.2f s, %d single, %d pairs, %d matter%n", seconds, answer.single().size(),
                answer.pairs().size(), answer.matters().size());
        assertTrue(answer.possible());
        assertTrue(seconds < 10, "seconds: " + seconds);
    }

    private static Gear fewer(Gear gear) {
        return new Gear(gear.id(), gear.name(), gear.pieces() - 1, gear.gives(), gear.needs(), gear.duplex(), gear.works(),
                gear.needed(), gear.spareFor(), gear.cents(), gear.grams());
    }

    private static Answer answer(Task task, String kit) {
        return Answer.of(task, Shed.of(kit));
    }

    private static List<Kind> kinds(Answer answer) {
        return answer.missing().stream().map(Requirement::kind).toList();
    }
}
