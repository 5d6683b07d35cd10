package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;

/** Order, acceptance and cancellation of a whole check. */
class ChecksTest {

    private static final String CLASH = """
            A: S1 10:00-11:00 [Tern 10:20-10:30]
            B: S1b 10:00-11:00 [Tern 10:20-10:30]
            """;

    @Test
    void comesHeaviestFirstThenByTime() {
        List<Finding> findings = run(Sketch.of("""
                policies inHandMinutes=0
                Tern state=intermittent
                S2 -visits
                A: S1 10:00-11:00 [Tern 10:20-10:30]; S2 10:30-12:00
                B: S1 09:00-10:30
                """));
        List<String> order = findings.stream().map(f -> f.severity() + " " + f.rule() + f.when()
                .map(when -> " " + when.toString().substring(11, 16)).orElse("")).toList();
        assertEquals(List.of("BLOCKER same-site 10:00", "BLOCKER stops-overlap 10:30", "BLOCKER visit-missing 10:30",
                "ADVICE bird-intermittent 10:20"), order);
    }

    @Test
    void givesTheSameListForTheSameEvent() {
        Event event = Sketch.of(CLASH + "Tern -reports state=unknown\nS1 markErrorM=-1\nS2 squares=XX");
        List<String> first = described(run(Snapshot.of(event)));
        assertEquals(first, described(run(Snapshot.of(event))));
        Event turned = Snapshot.of(event);
        turned.getPlan().getStops().move(0, 1);
        assertEquals(first, described(run(turned)));
    }

    @Test
    void keepsAnAcceptanceUntilTheFactsChange() {
        Event event = Sketch.of(CLASH);
        Finding clash = of("one-channel", event);
        event.getAcceptances().add(clash.acceptance("one listens only", "Cy", Instant.parse("2031-06-01T00:00:00Z")));

        assertEquals("one listens only", of("one-channel", Snapshot.of(event)).accepted().orElseThrow().getReason());
        assertTrue(of("same-square", event).accepted().isEmpty());

        event.getPlan().getStops().get(0).getTurns().get(0).setEnd(Instant.parse("2031-06-21T10:29:00Z"));
        Finding changed = of("one-channel", event);
        assertTrue(changed.accepted().isEmpty());
        assertEquals(clash.key(), changed.key());
        assertNotEquals(clash.facts(), changed.facts());
    }

    @Test
    void anAcceptedSiteFallsWithANewReview() {
        Event event = Sketch.of("S1 +reviews reviewer=Ann date=2031-06-10 verdict=do_not_use\nA: S1 10:00-11:00");
        event.getAcceptances().add(of("site-refused", event).acceptance("gate is open again", "Cy", Instant.EPOCH));
        assertTrue(of("site-refused", event).accepted().isPresent());

        Site site = event.getSites().get(0);
        site.getReviews().add(EcoreUtil.copy(site.getReviews().get(1)));
        site.getReviews().get(2).setId("another");
        assertTrue(of("site-refused", event).accepted().isEmpty());
    }

    @Test
    void tallyCountsAcceptedFindingsApart() {
        Event event = Sketch.of(CLASH + "policies inHandMinutes=0\nTern state=intermittent");
        event.getAcceptances().add(of("one-channel", event).acceptance("agreed", "Cy", Instant.EPOCH));
        assertEquals("1 blocker, 0 warnings, 1 piece of advice, 1 accepted", Tally.of(run(event)).toString());
    }

    @Test
    void stopsWhenCancelled() {
        Outlook outlook = Outlook.of(Sketch.of(CLASH), null);
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> Checks.standard().run(outlook, monitor));
    }

    @Test
    void anEmptyEventAndABareOneAreChecked() {
        assertTrue(run(Fresh.event(null)).stream().anyMatch(f -> f.rule().equals("plan-empty")));
        Event bare = Fresh.event("bare");
        bare.setPolicies(null);
        bare.setPlan(null);
        bare.getSites().add(Fresh.site());
        bare.getBirds().add(Fresh.bird());
        bare.getTeams().add(Fresh.team());
        bare.getBases().add(Fresh.base());
        run(bare).forEach(finding -> assertTrue(!finding.sentence().contains("null"), finding.sentence()));
    }

    /** A site whose file was removed leaves a reference that leads nowhere. */
    @Test
    void aStopAtASiteThatIsGoneIsIncomplete() {
        Event event = Sketch.of("A: S1 10:00-11:00 [Tern 10:20-10:30]");
        Site gone = Fresh.site();
        ((InternalEObject) gone).eSetProxyURI(URI.createURI("sites/gone.xmi#gone"));
        Stop stop = event.getPlan().getStops().get(0);
        stop.setSite(gone);
        assertEquals("A stop of team 1 (A) from 21 Jun 12:00 (10:00 UTC) has no site.",
                of("stop-incomplete", event).sentence());
    }

    @Test
    void policiesWithoutSenseBecomeDefaults() {
        Event event = Sketch.of("A: S1 10:00-11:00; S2 12:10-13:00");
        Policies policies = event.getPolicies();
        policies.setRoadSpeedKmh(Double.NaN);
        policies.setDetourFactor(0);
        policies.setTurnGapMinutes(-5);
        policies.setBreakAfterMinutes(0);
        assertEquals(List.of(), described(run(event)).stream().filter(text -> text.contains("drive")).toList());
    }

    private static Finding of(String rule, Event event) {
        return run(event).stream().filter(finding -> finding.rule().equals(rule)).findFirst().orElseThrow();
    }

    private static List<Finding> run(Event event) {
        return Checks.standard().run(Outlook.of(event, null), null);
    }

    private static List<String> described(List<Finding> findings) {
        return findings.stream().map(f -> f.key() + " " + f.facts() + " " + f.sentence()).toList();
    }
}
