package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;

/** Every thing that a finding names leads to it, and acceptance takes it off the marks but not out of sight. */
class FindingsByThingTest {

    private final Event event = Sketch.of("""
            policies inHandMinutes=0
            Tern state=intermittent
            A: S1 10:00-11:00 [Tern 10:20-10:30]
            B: S1b 10:00-11:00 [Tern 10:20-10:30]
            """);
    private final Stop stop = event.getPlan().getStops().get(0);

    private FindingsByThing findings() {
        return FindingsByThing.of(Checks.standard().run(Outlook.of(event, null), null));
    }

    private static List<String> rules(List<Finding> findings) {
        return findings.stream().map(Finding::rule).toList();
    }

    @Test
    void everyThingLeadsToItsFindingsHeaviestFirst() {
        assertEquals(List.of("same-square"), rules(findings().about(stop.getId())));
        assertEquals(List.of("one-channel", "bird-intermittent"), rules(findings().about(stop.getTurns().get(0).getId())));
        assertEquals(List.of("bird-intermittent"), rules(findings().about(event.getBirds().get(0).getId())));
        assertEquals(List.of(), findings().about("nothing"));
    }

    @Test
    void severalThingsTellEachFindingOnce() {
        List<Stop> both = event.getPlan().getStops();
        assertEquals(List.of("same-square"), rules(findings().open(both)));
        assertEquals(Optional.of(Severity.ADVICE), findings().gravest(event.getBirds()));
        assertEquals(Optional.empty(), findings().gravest(event.getSites()));
    }

    @Test
    void whatWasAcceptedIsToldButNotMarked() {
        event.getAcceptances().add(findings().about(stop.getId()).get(0).acceptance("agreed", "Cy", Instant.EPOCH));
        assertEquals(List.of("same-square"), rules(findings().about(stop.getId())));
        assertEquals(List.of(), findings().open(stop.getId()));
        assertEquals(Optional.empty(), findings().gravest(List.of(stop)));
    }
}
