package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.Promise;
import org.straddle.check.Promises;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanChange.Kind;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.Replan;
import org.straddle.plan.WhatIf;

/** A new plan holds on to what chasers were told, even where somebody edited the plan after it went out. */
class HeldTurnsTest {

    /** Worth more than anything else a turn can bring. */
    private static final double DEAR = 100;

    private final EditingDomain domain =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());

    private Event planned(long seed) {
        Event event = RandomEvent.of(seed, 3, 2, 10, 7);
        apply(event, propose(event, Replan.NONE));
        return event;
    }

    private Proposal propose(Event event, Replan replan) {
        return EventPlanner.standard().propose(Outlook.of(Snapshot.of(event), null),
                PlanSettings.ofIterations(150, 1).with(replan), new NullProgressMonitor());
    }

    private void apply(Event event, Proposal proposal) {
        domain.getCommandStack().execute(ApplyProposal.command(domain, event, proposal));
    }

    private static Replan keeping(double worth) {
        return new Replan(Optional.empty(), worth, List.of());
    }

    private static List<Turn> turns(Event event) {
        return event.getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream()).toList();
    }

    private static List<String> ofTheRevision(Proposal proposal) {
        return proposal.changes().stream().map(PlanChange::sentence)
                .filter(sentence -> sentence.startsWith("Revision ")).toList();
    }

    private static List<Promise> broken(Event event, List<Promise> published) {
        return Promises.of(Outlook.of(event, null)).since(published).dropped();
    }

    @Test
    void whatWasPublishedComesBackThoughThePlanWasEdited() {
        int restored = 0;
        for (long seed = 0; seed < 4; seed++) {
            Event event = planned(seed);
            double agreedMhz = 145.9;
            for (Turn turn : turns(event)) { // as when teams agree on their parts of passbands, each on its own
                turn.setDownlinkMhz(agreedMhz += 0.01);
            }
            List<Promise> published = Published.now(event);
            List<Stop> stops = event.getPlan().getStops();
            Turn cut = stops.get(stops.size() - 1).getTurns().get(0);
            cut.setEnd(cut.getEnd().minusSeconds(150));
            stops.get(1).setTeam(event.getTeams().get((event.getTeams().indexOf(stops.get(1).getTeam()) + 1) % 3));
            stops.remove(0);
            assertTrue(broken(event, published).size() > 2, "seed " + seed + ": nothing was edited");

            Proposal proposal = propose(event, keeping(DEAR));
            assertEquals(List.of(), ofTheRevision(proposal), "seed " + seed);
            assertTrue(proposal.upperBound().orElseThrow() >= proposal.objective() - 1e-6);
            restored += proposal.changes(Kind.RESTORED);
            apply(event, proposal);
            assertEquals(List.of(), broken(event, published), "seed " + seed);
        }
        assertTrue(restored > 4, "only " + restored + " turns came back");
    }

    /** The turn as published and the turn as edited bring the same squares; so what chasers were told decides. */
    @Test
    void whatNobodyWasToldOfGivesWay() {
        for (long seed = 0; seed < 4; seed++) {
            Event event = planned(seed);
            List<Promise> published = Published.now(event);
            for (Turn turn : turns(event)) {
                turn.setEnd(turn.getEnd().minusSeconds(120));
            }
            assertEquals(published.size(), broken(event, published).size());
            Proposal proposal = propose(event, keeping(Replan.USUAL_KEEPING));
            assertEquals(List.of(), ofTheRevision(proposal), "seed " + seed);
            assertTrue(proposal.changes().stream().filter(change -> change.kind() == Kind.MOVED)
                    .allMatch(change -> change.sentence().contains(", as published, instead of ")), "seed " + seed);
            apply(event, proposal);
            assertEquals(List.of(), broken(event, published), "seed " + seed);
        }
    }

    @Test
    void withoutARevisionThePresentPlanCountsInFull() {
        Event event = planned(2);
        assertEquals(turns(event).size() * DEAR, propose(event, keeping(DEAR)).keeping(), 1e-6);
        Published.now(event);
        assertEquals(turns(event).size() * DEAR, propose(event, keeping(DEAR)).keeping(), 1e-6);
        event.getRevisions().get(0).getPromises().clear();
        assertEquals(turns(event).size() * DEAR * HeldTurns.UNTOLD, propose(event, keeping(DEAR)).keeping(), 1e-6);
    }

    @Test
    void whatCannotBeKeptIsToldWithItsReason() {
        Event event = planned(1);
        List<Promise> published = Published.now(event);
        Bird bird = turns(event).get(0).getBird();
        Team team = event.getTeams().get(2);
        Site site = event.getPlan().getStops().stream().filter(stop -> stop.getTeam() != team).map(Stop::getSite)
                .reduce((first, last) -> last).orElseThrow();
        new ArrayList<>(event.getPlan().getStops()).stream()
                .filter(stop -> stop.getTeam() == team || stop.getSite() == site).forEach(event.getPlan().getStops()::remove);
        event.getPlan().getStops().forEach(stop -> stop.getTurns().removeIf(turn -> turn.getBird() == bird));
        event.getBirds().remove(bird);
        event.getTeams().remove(team);
        event.getSites().remove(site);
        String squares = String.join("+", published.stream().filter(promise -> site.getSquares().containsAll(promise.squares()))
                .findFirst().orElseThrow().squares());

        List<String> told = ofTheRevision(propose(event, keeping(DEAR)));
        for (Promise promise : published) {
            boolean gone = promise.birdId().equals(bird.getId()) || promise.teamId().equals(team.getId());
            if (gone) {
                assertTrue(told.stream().anyMatch(sentence -> sentence.contains(promise.line())), promise.line() + told);
            }
        }
        assertTrue(told.stream().anyMatch(sentence -> sentence.startsWith("Revision 1 promises 2031-06-")
                && sentence.endsWith("Nobody works that: the bird is no longer in the event.")), told::toString);
        assertTrue(told.stream().anyMatch(sentence -> sentence.endsWith("the team is no longer in the event.")
                || sentence.contains(" Team ")), told::toString);
        assertTrue(told.stream().anyMatch(sentence -> sentence.contains(" " + squares + " ")), told::toString);
    }

    @Test
    void whatBeganIsNotHeldAnyMore() {
        Event event = planned(3);
        List<Promise> published = Published.now(event);
        event.getPlan().getStops().clear();
        Instant later = published.get(published.size() / 2).start();
        long open = published.stream().filter(promise -> !promise.start().isBefore(later)).count();
        assertTrue(0 < open && open < published.size());
        Proposal proposal = propose(event, new Replan(Optional.of(later), DEAR, List.of()));
        assertTrue(proposal.changes().stream().noneMatch(change -> change.at().isBefore(later.minusSeconds(30))));
        long kept = proposal.changes(Kind.RESTORED);
        assertEquals(open, kept + ofTheRevision(proposal).size());
        assertTrue(kept > 0);
    }

    @Test
    void aBanIsTheReasonWhereThereIsOne() {
        Event event = planned(0);
        Published.now(event);
        Bird bird = turns(event).get(0).getBird();
        event.getPlan().getStops().clear();
        List<String> told = ofTheRevision(propose(event, new Replan(Optional.empty(), DEAR,
                List.of(new WhatIf.DeadBird(bird, Optional.empty(), Optional.empty())))));
        assertTrue(!told.isEmpty() && told.stream().allMatch(sentence ->
                sentence.endsWith("Nobody works that: " + bird.getName() + " is silent.")), told::toString);
    }
}
