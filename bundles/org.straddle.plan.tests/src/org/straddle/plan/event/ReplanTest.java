package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.model.Access;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Bans;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.Work;
import org.straddle.plan.PlanChange.Kind;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.Replan;
import org.straddle.plan.WhatIf;
import org.straddle.sky.Window;

/** Plans made anew after something happened: what stays, what changes, and that nothing banned is left. */
class ReplanTest {

    /** Worth more than anything else a turn can bring. */
    private static final double DEAR = 100;

    private final EditingDomain domain =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());

    private static Event event(long seed) {
        return RandomEvent.of(seed, 3, 2, 10, 7);
    }

    private Proposal propose(Event event, Replan replan, long steps) {
        return EventPlanner.standard().propose(Outlook.of(Snapshot.of(event), null),
                PlanSettings.ofIterations(steps, 1).with(replan), new NullProgressMonitor());
    }

    private void apply(Event event, Proposal proposal) {
        Command command = ApplyProposal.command(domain, event, proposal);
        assertTrue(command.canExecute());
        domain.getCommandStack().execute(command);
    }

    private Event planned(long seed) {
        Event event = event(seed);
        apply(event, propose(event, Replan.NONE, 120));
        return event;
    }

    private static Replan keeping(WhatIf... whatIfs) {
        return new Replan(Optional.empty(), DEAR, List.of(whatIfs));
    }

    private static Set<String> described(Collection<Stop> stops) {
        return stops.stream().map(stop -> stop.getId() + stop.getTeam().getId() + stop.getSite().getId()
                + stop.getArrival() + stop.getDeparture() + stop.getTurns().stream()
                        .map(turn -> turn.getId() + turn.getBird().getId() + turn.getStart() + turn.getEnd()).sorted().toList())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> blockers(Event event) {
        return Checks.standard().run(Outlook.of(Snapshot.of(event), null), new NullProgressMonitor()).stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).map(Finding::key)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void assertNothingIsBanned(Event event) {
        Bans bans = Bans.of(event);
        for (Stop stop : event.getPlan().getStops()) {
            assertEquals(List.of(), bans.onStop(stop.getTeam(), stop.getSite(),
                    new Window(stop.getArrival(), stop.getDeparture())), stop::toString);
            for (Turn turn : stop.getTurns()) {
                assertEquals(List.of(), bans.onTurn(stop.getTeam(), stop.getSite(), turn.getBird(),
                        new Window(turn.getStart(), turn.getEnd())), turn::toString);
            }
        }
    }

    @Test
    void withoutAReasonNothingChanges() {
        for (long seed = 0; seed < 4; seed++) {
            Event event = planned(seed);
            Set<String> before = described(event.getPlan().getStops());
            Proposal again = propose(event, keeping(), 120);
            assertEquals(0, again.changes(Kind.DROPPED) + again.changes(Kind.MOVED), "seed " + seed);
            long turns = event.getPlan().getStops().stream().mapToLong(stop -> stop.getTurns().size()).sum();
            assertEquals(turns, again.changes(Kind.KEPT));
            assertEquals(turns * DEAR, again.keeping(), 1e-6);
            assertTrue(again.upperBound().orElseThrow() >= again.objective() - 1e-6);
            apply(event, again);
            if (again.changes(Kind.ADDED) == 0) {
                assertEquals(before, described(event.getPlan().getStops()), "seed " + seed);
            }
        }
    }

    /** Every team's whole plan but one's stays when keeping is dear. */
    @Test
    void whatABreakdownDoesNotTouchStays() {
        for (long seed = 0; seed < 4; seed++) {
            Event event = planned(seed);
            Team broken = event.getTeams().get(0);
            Instant from = broken.getDays().get(0).getFrom().plus(Duration.ofHours(3));
            Instant until = from.plus(Duration.ofHours(4));
            long touched = event.getPlan().getStops().stream().filter(stop -> stop.getTeam() == broken
                    && stop.getArrival().isBefore(until) && stop.getDeparture().isAfter(from))
                    .mapToLong(stop -> stop.getTurns().size()).sum();
            Event before = Snapshot.of(event);
            Proposal proposal = propose(event,
                    keeping(new WhatIf.Breakdown(broken, Optional.of(from), Optional.of(until))), 150);
            assertTrue(proposal.changes().stream().filter(change -> change.kind() == Kind.DROPPED || change.kind() == Kind.MOVED)
                    .allMatch(change -> ((Stop) change.before().orElseThrow().eContainer()).getTeam().getId().equals(broken.getId())),
                    "seed " + seed + proposal.changes());
            assertTrue(touched == 0 || proposal.changes(Kind.DROPPED) + proposal.changes(Kind.MOVED) > 0, "seed " + seed);
            apply(event, proposal);
            assertEquals(1, event.getPlan().getBans().size());
            assertNothingIsBanned(event);
            assertEquals(Set.of(), blockers(event), "seed " + seed);
            domain.getCommandStack().undo();
            assertTrue(EcoreUtil.equals(before, event), "one undo takes plan and ban back");
        }
    }

    @Test
    void closedSitesDeadBirdsAndLateStartsAreKept() {
        int dropped = 0;
        for (long seed = 0; seed < 4; seed++) {
            Event event = planned(seed);
            if (event.getPlan().getStops().isEmpty()) {
                continue;
            }
            Stop stop = event.getPlan().getStops().get(0);
            Site site = stop.getSite();
            Bird bird = stop.getTurns().get(0).getBird();
            Team late = event.getTeams().get(1);
            Instant start = late.getDays().get(1).getFrom().plus(Duration.ofHours(2));
            Proposal proposal = propose(event, new Replan(Optional.empty(), Replan.USUAL_KEEPING, List.of(
                    new WhatIf.ClosedSite(site, Optional.empty(), Optional.empty()),
                    new WhatIf.DeadBird(bird, Optional.empty(), Optional.empty()),
                    new WhatIf.LateStart(late, start))), 150);
            dropped += proposal.changes(Kind.DROPPED);
            apply(event, proposal);
            assertNothingIsBanned(event);
            assertEquals(Set.of(), blockers(event), "seed " + seed);
            assertTrue(event.getPlan().getStops().stream().noneMatch(s -> s.getSite() == site));
            assertTrue(event.getPlan().getStops().stream().flatMap(s -> s.getTurns().stream()).noneMatch(t -> t.getBird() == bird));
            List<String> reasons = proposal.changes().stream().filter(change -> change.kind() == Kind.DROPPED)
                    .map(PlanChange::sentence).toList();
            assertTrue(reasons.stream().anyMatch(sentence -> sentence.contains("is closed")), reasons::toString);
            assertEquals(3, event.getPlan().getBans().size());
        }
        assertTrue(dropped > 4, "only " + dropped + " turns dropped: nothing was tried");
    }

    @Test
    void whatBeganBeforeTheInstantStays() {
        int open = 0;
        for (long seed = 0; seed < 6; seed++) {
            Event event = planned(seed);
            Team broken = event.getTeams().get(0);
            Instant now = broken.getDays().get(0).getFrom().plus(Duration.ofMinutes(200 + 10 * seed));
            Set<String> past = described(event.getPlan().getStops().stream()
                    .filter(stop -> !stop.getDeparture().isAfter(now)).toList());
            Set<String> begun = event.getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream())
                    .filter(turn -> turn.getStart().isBefore(now)).map(Turn::getId).collect(Collectors.toSet());
            Proposal proposal = propose(event, new Replan(Optional.of(now), Replan.USUAL_KEEPING,
                    List.of(new WhatIf.Breakdown(broken, Optional.of(now), Optional.of(now.plus(Duration.ofHours(2)))))), 150);
            apply(event, proposal);
            assertTrue(described(event.getPlan().getStops()).containsAll(past), "seed " + seed);
            Set<String> all = event.getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream())
                    .map(Turn::getId).collect(Collectors.toSet());
            Set<String> cut = proposal.changes().stream().filter(change -> change.kind() == Kind.DROPPED)
                    .map(change -> change.before().orElseThrow().getId()).collect(Collectors.toSet());
            assertTrue(all.containsAll(begun.stream().filter(id -> !cut.contains(id)).toList()), "seed " + seed);
            assertTrue(event.getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream())
                    .filter(turn -> turn.getStart().isBefore(now)).allMatch(turn -> begun.contains(turn.getId())),
                    "seed " + seed + ": nothing begins in the past");
            assertNothingIsBanned(event);
            assertEquals(Set.of(), blockers(event), "seed " + seed);
            assertTrue(proposal.upperBound().orElse(Double.POSITIVE_INFINITY) >= proposal.objective() - 1e-6);
            open += event.getPlan().getStops().stream().filter(stop -> stop.getArrival().isAfter(now)).count();
        }
        assertTrue(open > 10, "only " + open + " stops after the instant: nothing was tried");
    }

    /** A downlink that two teams agreed on at once is agreed anew; notes stay. */
    @Test
    void downlinksOfAPlanAtOddsWithItselfAreAgreedAnew() {
        Event event = planned(1);
        event.getPlan().getStops().forEach(stop -> stop.getTurns().forEach(turn -> {
            turn.setDownlinkMhz(145.9);
            turn.setNote("noted");
        }));
        apply(event, propose(event, keeping(), 40));
        assertEquals(Set.of(), blockers(event));
        assertTrue(event.getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream())
                .anyMatch(turn -> turn.getDownlinkMhz() > 0 && turn.getNote().equals("noted")));
    }

    /** Teams that meet in a passband go out with a part of it each. */
    @Test
    void aPlanAgreesOnDownlinks() {
        int met = 0;
        for (long seed = 0; seed < 6; seed++) {
            Event event = event(seed);
            event.getBirds().forEach(bird -> {
                bird.setAccess(Access.PASSBAND);
                bird.setDownlink(Fresh.link(145.9, 145.94));
            });
            apply(event, propose(event, Replan.NONE, 60));
            Outlook outlook = Outlook.of(event, null);
            List<Work> works = Itinerary.of(event).turns();
            for (Work one : works) {
                List<Work> others = works.stream().filter(other -> other.bird() == one.bird()
                        && SharedTurns.of(outlook, one, other).isPresent()).toList();
                assertEquals(!others.isEmpty(), one.turn().getDownlinkMhz() > 0, "only where teams meet, seed " + seed);
                assertTrue(others.stream().noneMatch(other -> SharedTurns.agreedOnSame(one, other)), "seed " + seed);
                met += others.size();
            }
            assertEquals(Set.of(), blockers(event));
        }
        assertTrue(met > 10, "only " + met + " times did teams meet");
    }

    @Test
    void aProposalForAPastThatChangedCannotBeApplied() {
        Event event = planned(2);
        Instant now = event.getTeams().get(0).getDays().get(0).getFrom().plus(Duration.ofHours(5));
        Proposal proposal = propose(event, new Replan(Optional.of(now), 1, List.of()), 20);
        assertTrue(ApplyProposal.command(domain, event, proposal).canExecute());
        Stop past = event.getPlan().getStops().stream().filter(stop -> stop.getArrival().isBefore(now)).findFirst().orElseThrow();
        past.setArrival(past.getArrival().minusSeconds(60));
        assertFalse(ApplyProposal.command(domain, event, proposal).canExecute());
    }
}
