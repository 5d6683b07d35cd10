package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.kit.KitNotation.covered;
import static org.straddle.kit.KitNotation.singlePoints;
import static org.straddle.kit.KitNotation.team;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.kit.team.SpareLoop;
import org.straddle.model.WorkMode;

/** Common practice, no source: a radio, an antenna, a feedline and power make a station, data wants a computer. */
class SinglePointTest {

    private static final String REST = "; antenna yagi x2; feedline coax x2; power battery x2";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # one radio: its failure stops what it is for
            radio rig!                                        | rig:fm+linear
            radio rig                                         | rig:fm+linear
            radio rig! linear; radio handheld fm x2           | rig:linear
            # a second piece, or an item that can stand in for it, saves the mode
            radio rig! x2                                     | ''
            radio rig!; radio old ->rig                       | ''
            radio rig; radio other                            | ''
            # only in the modes that the spare can do
            radio rig!; radio old fm ->rig                    | rig:linear
            # two radios that are both needed do not save each other
            radio tx!; radio rx!                              | tx:fm+linear rx:fm+linear
            # nor does an item of another role, unless it is entered as a spare
            radio rig x2; audio headset!                      | headset:fm+linear
            radio rig x2; audio headset!; audio phones ->headset | ''
            # not needed and not one of the roles: nothing stops
            radio rig x2; comfort chair                       | ''
            # rings of spares save each other; an item is not its own spare
            radio a! ->b; radio b! ->a                        | ''
            radio a! ->b; radio b! ->c; radio c! ->a          | ''
            radio a! ->a                                      | a:fm+linear
            # a spare of which there is no piece is none
            radio rig!; radio old ->rig x0                    | rig:fm+linear
            """)
    void oneFailure(String radios, String expected) {
        String points = singlePoints(team(radios + REST));
        assertEquals(expected.isEmpty() ? expected : sorted(expected), sorted(points));
    }

    private static String sorted(String words) {
        return Stream.of(words.split(" ")).sorted().collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            radio r; antenna a; feedline f; power p                      | fm linear
            radio r; antenna a; feedline f; power p; computer c          | fm linear data
            radio r; antenna a; feedline f; power p; computer c fm       | fm linear
            radio r fm; antenna a; feedline f; power p                   | fm
            radio r; antenna a fm; feedline f linear; power p            | ''
            radio r; antenna a; feedline f                               | ''
            radio handheld 10Wh; antenna a; feedline f                   | fm linear
            radio r; antenna a; feedline f; power p x0                   | ''
            radio r; antenna a; feedline f; power p; audio key! linear x0 | fm
            """)
    void coversAMode(String kit, String modes) {
        assertEquals(modes, covered(team(kit)));
    }

    @Test
    void aSpareInAnotherKitOfTheSameCarCounts() {
        assertEquals("", singlePoints(team("radio rig!" + REST, "radio old ->rig")));
    }

    @Test
    void aSpareThatRidesWithAnotherTeamDoesNotCount() {
        var mine = team("radio rig!" + REST);
        var theirs = team("radio old");
        theirs.getKits().get(0).getItems().get(0).setSpareFor(mine.getKits().get(0).getItems().get(0));
        assertEquals("rig:fm+linear", singlePoints(mine));
    }

    @Test
    void aModeThatCannotBeWorkedSaysWhatIsLacking() {
        var fm = KitNotation.answers(team("radio r; audio key! x0")).get(WorkMode.FM);
        assertEquals("ANTENNA POWER FEED_LINE MARKED_ITEM", fm.missing().stream().map(missing -> missing.kind().name())
                .distinct().collect(Collectors.joining(" ")));
        assertTrue(fm.single().isEmpty(), "what does not work cannot be stopped");
    }

    @Test
    void namesEachRingOfSparesOnce() {
        var loops = PackingList.of(team("radio a ->b; radio b ->a; radio c ->a; tool t ->t; tool u ->t")).spareLoops();
        assertEquals(List.of(
                "“a”, “b” are entered as each other's spares: clear the entry of the one that is in use.",
                "“t” is entered as its own spare, which it cannot be: clear that entry, or count two pieces."),
                loops.stream().map(SpareLoop::sentence).toList());
    }
}
