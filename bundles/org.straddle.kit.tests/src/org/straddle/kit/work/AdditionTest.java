package org.straddle.kit.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** The cheapest, then lightest addition that survives any single failure. */
class AdditionTest {

    private static final Task FM = new Task(Work.FM, "2m", "70cm");
    private static final Duration LIMIT = Duration.ofSeconds(20);
    private static final String KIT = "rig tx rx push_to_talk; cable feed_line x2; battery power x2; beam antenna";

    @Test
    void oneOfEachSinglePoint() {
        assertEquals("beam2 rig2", names(KIT, "beam2 antenna 500c; rig2 tx rx push_to_talk 9000c; rig3 tx rx push_to_talk 9900c"));
    }

    @Test
    void twoHalvesMayBeCheaperThanAWhole() {
        assertEquals("rig2 stick whip", names(KIT, "beam2 antenna 500c; whip antenna@2m 100c; stick antenna@70cm 100c;"
                + "rig2 tx rx push_to_talk"));
    }

    @Test
    void lightestOfEqualPrice() {
        assertEquals("light rig2", names(KIT, "heavy antenna 900g; light antenna 200g; rig2 tx rx push_to_talk"));
    }

    @Test
    void whatIsAddedMayNeedSomethingToo() {
        assertEquals("beam2 plug rig2", names(KIT, "beam2 antenna needs:adapter 1c; plug adapter 1c; beam3 antenna 5c;"
                + "rig2 tx rx push_to_talk"));
    }

    @Test
    void nothingToAddAndNothingThatHelps() {
        String whole = KIT.replace("rig tx", "rig x2 tx").replace("beam", "beam x2");
        assertEquals("", names(whole, "beam2 antenna 500c"));
        assertTrue(Addition.cheapest(List.of(FM), Shed.of(KIT), Shed.of("beam2 antenna"), LIMIT).isEmpty());
    }

    @Test
    void aMarkOnStockAsksForNothing() {
        assertEquals("beam2 rig2", names(KIT, "beam2 antenna 5c; rig2 tx rx push_to_talk; lamp ! support"));
    }

    @Test
    void timeThatRanOutIsSaid() {
        Addition addition = Addition.cheapest(List.of(FM), Shed.of(KIT), Shed.of("a antenna; r tx rx push_to_talk"),
                Duration.ZERO).orElseThrow();
        assertFalse(addition.proven());
        List<Gear> all = new ArrayList<>(Shed.of(KIT));
        all.addAll(addition.gear());
        assertTrue(Answer.of(FM, all).single().isEmpty());
    }

    @Test
    void randomKitsAgainstTryingEveryChoice() {
        Random random = new Random(7);
        String[] parts = { "tx rx push_to_talk", "rx@70cm", "tx@2m push_to_talk", "antenna@2m", "antenna@70cm", "antenna",
                "antenna needs:adapter", "adapter", "feed_line", "power", "feed_line power needs:adapter" };
        int found = 0;
        for (int round = 0; round < 400; round++) {
            List<Gear> kit = random(random, parts, "k", 3 + random.nextInt(7));
            List<Gear> offer = random(random, parts, "o", 4 + random.nextInt(7));
            Optional<Cost> tried = tried(kit, offer);
            Optional<Addition> addition = Addition.cheapest(List.of(FM), kit, offer, LIMIT);
            assertEquals(tried, addition.map(Addition::cost), kit + " / " + offer);
            assertTrue(addition.isEmpty() || addition.get().proven());
            found += addition.isPresent() ? 1 : 0;
        }
        assertTrue(found > 50, "with a remedy: " + found);
    }

    /** A hundred things on offer, most of them different. */
    @Test
    void aLargeStock() {
        Random random = new Random(5);
        String[] parts = { "tx rx push_to_talk", "rx@70cm", "tx@2m push_to_talk", "antenna@2m", "antenna@70cm",
                "antenna needs:adapter", "adapter", "feed_line", "power" };
        List<Gear> offer = random(random, parts, "o", 300);
        long start = System.nanoTime();
        Addition addition = Addition.cheapest(List.of(FM, new Task(Work.LINEAR_FULL_DUPLEX, "2m", "70cm")), List.of(), offer,
                LIMIT).orElseThrow();
        System.out.printf("300 on offer: %.2f s, %d pieces%n", (System.nanoTime() - start) / 1e9, addition.gear().size());
        assertTrue(addition.proven());
    }

    /** Tries all choices, from the best on: the first that will do is the answer. */
    private static Optional<Cost> tried(List<Gear> kit, List<Gear> offer) {
        List<List<Gear>> choices = IntStream.range(0, 1 << offer.size())
                .mapToObj(choice -> IntStream.range(0, offer.size()).filter(i -> (choice >> i & 1) == 1).mapToObj(offer::get).toList())
                .sorted(Comparator.comparing(AdditionTest::cost)).toList();
        for (List<Gear> choice : choices) {
            List<Gear> all = new ArrayList<>(kit);
            all.addAll(choice);
            if (survivesAnyFailure(all)) {
                return Optional.of(cost(choice));
            }
        }
        return Optional.empty();
    }

    /** By definition: the task can be done with all, and without any one piece. */
    private static boolean survivesAnyFailure(List<Gear> kit) {
        Pieces pieces = new Pieces(kit);
        Condition condition = Condition.of(Demands.of(FM, pieces), pieces);
        return condition.holds(pieces.all()) && IntStream.range(0, pieces.size()).allMatch(failed -> {
            BitSet left = pieces.all();
            left.clear(failed);
            return condition.holds(left);
        });
    }

    private static Cost cost(List<Gear> choice) {
        return choice.stream().map(Cost::of).reduce(Cost.NOTHING, Cost::plus);
    }

    private static List<Gear> random(Random random, String[] parts, String letter, int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(i == 0 ? "" : ";").append(letter + i + " ").append(parts[random.nextInt(parts.length)])
                    .append(" " + random.nextInt(5) + "c " + random.nextInt(3) + "g");
        }
        return Shed.of(text.toString());
    }

    private static String names(String kit, String offer) {
        Addition addition = Addition.cheapest(List.of(FM), Shed.of(kit), Shed.of(offer), LIMIT).orElseThrow();
        assertTrue(addition.proven());
        return String.join(" ", addition.gear().stream().map(Gear::name).sorted().toList());
    }
}
