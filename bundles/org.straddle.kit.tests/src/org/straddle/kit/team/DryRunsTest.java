package org.straddle.kit.team;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.model.Bird;
import org.straddle.model.DryRun;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;

class DryRunsTest {

    private final Team team = Fresh.team();
    private final Kit kit = Fresh.kit();
    private final KitItem radio = Fresh.kitItem();
    private final Bird bird = Fresh.bird();

    @Test
    void aFailureCountsUntilALaterRunWithTheSameKitWorks() {
        kit.setName("South kit");
        radio.setName("radio");
        bird.setName("Tern");
        kit.getItems().add(radio);
        DryRun run = run("2031-06-12T10:00:00Z", kit, false);
        assertEquals(List.of("The dry run of 12 Jun 2031 by Q0AAR with South kit on Tern failed: no contact was made."), open());
        run.setFailed(radio);
        assertEquals(List.of("The dry run of 12 Jun 2031 by Q0AAR with South kit on Tern failed: “radio” failed and no contact was made."),
                open());
        run("2031-06-13T10:00:00Z", Fresh.kit(), true);
        assertEquals(1, open().size(), "another kit says nothing of this one");
        run("2031-06-11T10:00:00Z", kit, true);
        assertEquals(1, open().size(), "an earlier one neither");
        run("2031-06-14T10:00:00Z", kit, true);
        assertEquals(List.of(), open());
    }

    @Test
    void anItemThatFailedInAContactCountsUntilItIsTestedLater() {
        radio.setName("radio");
        DryRun run = run("2031-06-12T10:00:00Z", null, true);
        run.setFailed(radio);
        assertEquals(1, open().size());
        radio.setTestedOnAir(StraddleFactory.eINSTANCE.createTick());
        radio.getTestedOnAir().setAt(Instant.parse("2031-06-11T10:00:00Z"));
        assertEquals(1, open().size());
        run("2031-06-13T10:00:00Z", null, true);
        assertEquals(List.of(), open());
    }

    @Test
    void withoutAnythingWrittenDownItStillSpeaks() {
        team.getDryRuns().add(Fresh.dryRun());
        assertEquals(List.of("The dry run failed: no contact was made."), open());
        team.getDryRuns().clear();
        assertEquals(List.of(), open());
    }

    private List<String> open() {
        return DryRuns.of(team).open();
    }

    private DryRun run(String at, Kit used, boolean worked) {
        DryRun run = Fresh.dryRun();
        run.setAt(Instant.parse(at));
        run.setBy("Q0AAR");
        run.setKit(used);
        run.setBird(bird);
        run.setWorked(worked);
        team.getDryRuns().add(run);
        return run;
    }
}
